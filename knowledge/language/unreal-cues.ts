// Words of what is not at hand: what would be, what one should do, what was once owned or seen elsewhere, what all of
// a kind have, and things that are no part of a car. A clause with such a word tells nothing of the part in hand.
// Lists of everyday English, from memory; clauses come with plain nouns ("part", "car").

/** Supposed, not seen; "I'd say" and "it wouldn't budge" are what somebody found. */
const supposedCues =
  /\b(?:would(?!nt)|wouldve|itd|thatd|theyd|youd|id (?:have|be|love|rather|buy|fit|expect|prefer|never|keep|take|want|give|pay|swap|happily|gladly|only|still)|wouldnt (?:be|have|know|trust|want|look|mind|say no)|had i\b|were it|were i|shouldve|couldve|mightve|might (?:have (?:to|had)|repaint|paint|fit|buy|get|sell|swap|change|leave|keep|try)|if (?:yours?|someone|somebody|anyone|anybody|one|a|an|he|she|we)\b|(?:in|by) theory|theoretically|for the sake of argument|pretend|^(?:so |ok |well )?say (?:it|they|the|i|you|somebody|someone|there|a)\b|assume (?:it|they|the)|had it been|as if by|when i (?:win|grow|get (?:round|around)|find))\b/;

/** What "would" stands for something found: "I would say", "the magnet would not hold". */
const foundCues =
  /\b(?:i|we|you|one|theyd|id) would (?:say|call|guess|put it|describe|reckon|estimate|think|bet|swear|hazard|you say|not (?:say|call))|\bi d say|(?:that|which|to) would (?:tell|say|show|give|name|identify)|as (?:you|one|i|we|they) would (?:expect|hope|imagine|guess|think)|what (?:i|you|some|they|people) would (?:call|describe)|would (?:you believe|appear|seem|suggest|not (?:stick|hold|grip|take|budge|come|move|go|scratch|ring|fit|bite))|where (?:\w+ ){1,5}would (?:be|have been|go|sit|live)|(?:a|the|where) (?:\w+ ){1,2}would (?:live|go|be|sit)\b/;

/** To be done or to come. */
const plannedCues =
  /\b(?:(?:next|this|coming) (?:job|project|step|task|winter|summer|spring|autumn)(?:s plan)?\b|(?:arriv\w+|due|coming|collecting|turns? up|comes) (?:\w+ )?(?:tonight|tomorrow|monday|tuesday|wednesday|thursday|friday|saturday|sunday|next week|soon|this week)|(?:i|we|ill|well) (?:will|shall)? ?(?:be )?(?:check(?:ing)?|report|have a look|take a look|try to|be fitting|measure)\b(?=.*\b(?:tomorrow|tonight|later|once|when|after|soon|week|weekend|thing|back)\b)|will (?:check|look|report|see|try|post|update|have a look|take a look|measure|let you know)|(?:ill|i will|we will|itll|theyll) (?!say|admit|add\b|bet|be (?:honest|blunt|brief|damned)|give|spare|let|start|keep it|just (?:say|add)|tell|describe|not)\w+|(?:one|some) day\b|about to (?:fit|buy|paint|order)|once (?:they|it|the \w+) (?:turns?|arrives?|comes?|gets?|is here|are here|has gone)|opening the (?:parcel|box)|soon as (?:it|they|i)|winters? plan|to be (?:fitted|painted|polished|done))\b/;

/** Advice: what a reader should do, look for or expect. */
const adviceCues =
  /^(?:(?:please|just|so|and|but|then|first|also|tip|hint|well|no|oh) )*(?:ask (?!ed)|look (?:out )?for|beware|avoid|always|never (?!seen|been|had|painted|touched|fitted|drilled|used|repainted)|dont (?:ever |you )?(?:sand|buy|drill|paint|polish|touch|trust|forget|use|let|be|go|all|bother|worry|post)|remember to\b|make sure|watch (?:out|for)|walk away|tip (?:for|of|is)|pro ?tip|rule of thumb|a reminder|please (?:dont|post|do|keep|use|read|send|give) )|\b(?:you(?:ll| will) (?:find|see|need|want|notice|know|get)|you (?:want|should|must|ought|better|had better|might want|could try|can expect)|when you (?:get|have|come|are|buy|look)|thats how (?:you|they|to)|the (?:only |best |easy )?(?:way|trick|giveaway|test) (?:to|is|for)|gives? (?:a|the|it|them) (?:\w+ )?away|what to (?:look|ask|check)|as (?:a )?standard|ask (?:him|her|them|the (?:seller|owner)))\b/;

/** Once the speaker's own, or seen and left where it was. */
const bygoneCues =
  /\b(?:(?:i|we) (?:never|didnt|havent|am not|m not|never ever) (?:said|say|claimed|claim|saying)|im not (?:saying|asking|talking)|nobody (?:said|says|is saying)|(?:photo\w*|pictures?|pics?|images?|shots?) (?:\w+ )?(?:is|are|was|were) (?:so |too |very |a bit )?(?:blur\w*|dark|fuzzy|small|rough)|is what (?:you|he|she|they|youre|hes) (?:are |is )?(?:say|said|mean|tell)\w*|(?:that|this) (?:is|was) (?:the|my|a) question|(?:i|we) (?:\w+ )?(?:sold|scrapped|binned|gave away|part exchanged|let go|missed out)|wish (?:id|i had|i) (?:kept|bought)|(?:my|our) (?:previous|former|old|last|late(?! (?:\w+s|\w+ in laws) )|ex) (?:\w+ ){0,2}(?:part|parts|car|one|set|pair)|(?:that|this|it) was my (?:previous|old|last|first|other)|used to (?:have|own|run|make|fit|say)|mine (?:went|was sold|got sold|got nicked|was nicked)|years ago so|(?:part|parts|car|one|ones|set|pair|lot) (?:that )?(?:i|we) (?:looked at|saw|viewed|bid on|missed|passed on|left|nearly bought|went to see|was offered|were offered|sold|once had)|(?:parts|ones?) (?:at|in) (?:the|our) (?:meet|show|rally|meeting|museum|window|brochure)|near me\b|^(?:\w+ )?not mine\b|auction lot|^page \w+|in post (?:\w+)$|back in the day|in 19\d\d you|over the counter)\b/;

/** One of many: "another had a smear, a third had a strip", "a genuine one", "anything with". */
const kindCues =
  /\b(?:is worth (?:two|twice|more|less|every)\b|my favou?rites?|your (?:\w+ )?parts?|some of (?:these|those|them)|most of (?:these|those)|half of them|none of (?:these|those|them)|(?:i|you|we) (?:really |always |do |just )?(?:hate|prefer|fancy|adore|collect) (?:the|those|these|them|that)|in my experience|in general|as a rule|by then|in those days|back then|whoever (?:invented|designed|made|thought)|you lot|(?:i|you|we) (?:have )?never (?:seen|met|heard of|come across) (?:a|an|one|any)|hire car|another (?:had|has|was|is|with|got)|a (?:second|third|fourth|few|couple) (?:more )?(?:had|has|have|was|were)|some (?:had|have|are|were|came|come)|others (?:had|have|are|were|came)|one owner (?:i|we|who|said|says)|they come (?:with|in)|(?:a|any|every|no) (?:genuine|real|proper|original|true|correct|decent|good) (?:one|part|car|example)|anything (?:with|that|marked)|any (?:part|one|car) (?:with|that|which)|on the (?:early|late|later|genuine|good|bad|real|repro|copy|original) (?:ones?|parts?|cars?|copies)|the (?:early|late|later|very last|last few|last dozen|first few|first batch) (?:ones?|parts|cars|batch\w*)\b(?=.* (?:had|have|were|are|came|come|is|was)\b)|(?:pros|cons) (?:of|and)|(?:advantages?|downsides?) of|what(?:s| is| are)? the difference|the (?:clubs?|registers?) (?:stance|view|position|line)|(?:the|their) (?:rumou?r|legend|myth|story|joke)|theres (?:also )?a rumou?r|a joke)\b/;

/** "Soft letters mean a copy": what a sign stands for, not that it is there. */
const meaningCues =
  /^(?!.*\b(?:which|that|this|it|so|by|what) (?:\w+ )?(?:mean|means|meant|indicates?|proves?)\b).*\b(?:(?<!\bi )means?(?! of)|indicates?|(?:is|are) (?:a )?signs? of|tells? (?:you|us)|proves?)\b(?! (?:to|me|i)\b)/;

/** No part of a car: "the gel coat on my boat", "my left ear". */
const otherThings =
  /(?<!\b(?:like|than|in|behind|under|feed|walk|with|for|inside) )\b(?:(?:my|our|his|her|their|your|the) (?:left |right |old |other |bad |new |\w+s )*(?:boat|caravan|canoe|kayak|motorbike|motorcycle|bicycle|scooter|tractor|wheelbarrow|kit car|camper|lawnmower|guitar|piano|rug|carpet|cake|divorce|wedding|teapot)|my (?:left |right |old |other |bad |new )*(?:teeth|tooth|ears?|knees?|hips?|elbows?|neck))\b(?! (?:told|said|says|wheel))|\b(?:bathroom|kitchen) (?:cabinet|part)\b/;

/** "Where the number should be" is a place, not a rule. */
export const placeOfNorm = /\bwhere (?:\w+ ){1,5}(?:should|ought to) (?:be|have been)\b/;

/** Words of a clause without stops that says too much for one small word to govern all of it. */
const longest = 22;

function isLong(text: string): boolean {
  return text.split(" ").length > longest;
}

/** Whether a clause only supposes, plans or advises. */
export function isUnreal(text: string): boolean {
  if (isLong(text)) return false;
  if (plannedCues.test(text) || adviceCues.test(text)) return true;
  return supposedCues.test(text.replace(foundCues, "").replace(placeOfNorm, ""));
}

const conditionCues =
  /^(?:and |but |so |or )?if (?:yours?|someone|somebody|anyone|anybody|people|he|she|one)\b/;

/** Whether what a clause plans or sets as a condition, or the other part that it names, goes on to be spoken of. */
export function goesOn(text: string): boolean {
  return !isLong(text) && (plannedCues.test(text) || conditionCues.test(text) || isElsewhere(text));
}

/** Whether a clause is about all of a kind, or about what a sign stands for. */
export function isOfKind(text: string): boolean {
  return !isLong(text) && (kindCues.test(text) || meaningCues.test(text));
}

/** Whether what a clause speaks of was once owned, seen and left, or is no part of a car. */
export function isElsewhere(text: string): boolean {
  return bygoneCues.test(text) || otherThings.test(text);
}
