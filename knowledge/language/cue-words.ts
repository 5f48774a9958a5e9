// The small words that turn a statement: negation, doubt, who said it, whose car. Lists of the trade's and of
// everyday English, from memory; which stretch of the message a cue governs is decided in stance.ts.

function words(list: string): ReadonlySet<string> {
  return new Set(list.split(/\s+/));
}

const negations =
  words(`no not never without neither nor none nothing nowhere lacks lacking lack missing isnt arent wasnt werent dont doesnt
  didnt hasnt havent hadnt cant cannot couldnt wont wouldnt aint isn zero absent sans devoid minus`);
const numbers = words("one two three four five six seven eight nine ten eleven twelve first second third");

export const cueWords = {
  negations,
  /** Words that cannot stand inside a term. */
  parting: new Set([
    ...negations,
    ...numbers,
    ..."and or but then than versus vs instead rather idea clue doubt question problem need luck chance point joy".split(
      " ",
    ),
  ]),
  /** A clause that begins so stands against the one before. */
  contrast: words(
    "but though although however whereas while yet except otherwise nevertheless still anyway only",
  ),
  interrogative:
    words(`is are was were am do does did has have had can could should would will shall may might isnt arent wasnt werent dont doesnt
    didnt hasnt havent cant couldnt shouldnt wouldnt wont whats whos hows wheres whens what which who whose whom where when why how any anyone anybody`),
  polar:
    words(`is are was were am do does did has have had can could should would will shall may might isnt arent wasnt werent dont doesnt didnt
    hasnt havent cant couldnt shouldnt wouldnt wont any anyone anybody`),
} as const;

/** Half certainty: the speaker guessed as much as looked. */
export const maybeCues =
  /\b(?:maybe|either|hopefully|perhaps|possibly|might (?:be|have)|may (?:be|have)|could (?:be|have)|hard to (?:tell|say|see)|difficult to (?:tell|say|see)|not (?:really |at all |quite |too |so |very |100% |totally |entirely |completely )?(?:sure|certain|clear|positive)|not (?:one )?100|not (?:a )?hundred|cant be (?:sure|certain)|kind of|kinda|sort of|sorta|i guess|guessing|at a guess|wild guess|who knows|unsure|uncertain|no idea if|if i had to guess|could go either way|fifty fifty|50\/50|dont quote me|from memory|iirc|if i (?:remember|recall)|as far as i (?:remember|recall))\b|\(\?\)|\?\?/;

/** Three quarters: looked, but not firmly. */
export const thinksCues =
  /\b(?:think(?:ing)?|i thought|dont believe|looks? |looked (?:like|to)|appear(?:s|ed)?|seem(?:s|ed|ingly)?|probably|prob|likely|presumably|i believe|reckon|i suspect|suspect|suppose|i d say|id say|i would say|pretty sure|fairly sure|almost (?:sure|certain)|fairly certain|i assume|assuming|feels like|feels (?:a bit|more)|afaik|as far as i (?:know|can (?:see|tell)|could (?:see|tell))|from what i can (?:see|tell)|more or less|ish|imo|imho|my guess|must be|best i can tell|i m pretty|im pretty|sounds like|should be)\b/;

/** Somebody else's word: nothing that was seen by the speaker. */
export const hearsayCues =
  /\b(?:supposedly|apparently|blurb|patter|allegedly|reputedly|reportedly|rumou?r(?:ed)?|legend has it|according to (?!the (?:build|works|factory|log|plate|plaque|dial|stamp|etch\w*|clock|mark|label|sticker|glass|date|register|ledger|record|paper|bill|receipt|invoice|folder|document|certificate|v five)|my (?:tape|caliper|ruler|scale|vernier|build|log)|its (?:build|log))|so (?:he|she|they|im|i am|i was) (?:says?|said|told|reckon)|(?:been|was|were) (?:told|assured|informed|led to believe|promised)|(?:told|tells|telling) me|assure[sd]? me|swears?|swore|insist(?:s|ed)?|claim(?:s|ed|ing)?|reckons|thinks|believes|suspects|maintains|guarantees|advertised as|listed as|sold (?:to me )?as|(?:the )?story (?:was|is|goes)|(?:selling|sells|flogging|offering) (?:it|this|them|these|the \w+) as|^(?:and )?(?:the |his |her |their |an? )?(?:advert|ad|listing|description|seller|caption|blurb|vendor|dealer)$|sold me (?:it|this|them|these) as|described as|billed as|offered as|passed off as|(?:advert(?:isement)?s?|ads?|listing|catalogue|catalog|brochure|book|manual|handbook|list|site|website) (?:(?:list|give|show|say|quote|state|call|read)s?|said|has)|(?:everyone|everybody|people|they all) (?:\w+ )?(?:say|tell|think|reckon)s?|(?:i|ive) (?:heard|read(?! (?:(?:it|this|that) )?as\b))|heard it|word is|they say|some say|(?:says|said) (?:that )?(?:it|its|they|theyre|these|this|the(?! (?:clock|dial|stamp|label|mark|glass|plate|plaque|sticker|calipers?|vernier|tape|ruler?|scales?|papers?|paperwork|log ?book|certificate))|there|his|he|she)|(?<!\bi )(?:remembered|recalled|remembers|recalls)|(?:part|car|one)s? (?:that )?(?:he|she|they) (?:(?:want|ask|sell|offer)(?:s|ed)?|is|are|has|have)|quote$|(?:someone|somebody|people|folks?|members?|others|guys) (?:\w+ ){0,4}(?:said|says?|told|reckon)|in law (?:(?:think|say|reckon)s?|said|told)|(?:seller|vendor|guy|bloke|chap|dealer|trader) (?:\w+ ){1,4}(?:(?:say|reckon|think)s?|said)|(?:seller|vendor|guy|bloke|chap|fella|fellow|dealer|trader|previous owner|po|dpo|mate|friend|brother|neighbou?r|dad|father|uncle|club|forum|facebook|book|manual|expert|internet|someone|somebody|he|she|they|owner|man|lad|wife|husband|shop|restorer|member) (?:\w+ )?(?:(?:say|reckon|think|call|believe|describe|assure|write|state|mention|promise|confirm|inform|suggest)(?:s|d|ed)?|said|told|tells|thought|wrote|replie[sd]|answer(?:s|ed)|guaranteed|emailed|texted|messaged|(?:is|was) (?:sure|certain|adamant|convinced)))\b/;

/** Somebody else's car or part, or all cars of a kind: no fact about the one in hand. */
export const otherCarCues =
  /\b(?:(?:my|a|his|her|the|our) (?:mate|friend|brother|neighbou?r|dad|father|uncle|son|buddy|buddie|pal|colleague|cousin|sister|clubmate|boss|wife|husband)s? (?:\w+ ){0,3}?(?:has|had|have|is|are|was|were|got|car|one|parts?|came|with)\b(?!.*\b(?:owner|owned|bought it|had it from)\b)|(?:my|the|an|our|his|her|some|most|every|any) other (?:car|one|owner|member)|another (?:car|one|owner|member|guy|chap)|other (?:cars|ones|people|owners|members)|some(?:one|body) elses?|(?:his|hers|theirs|yours) (?:has|had|have|is|are|was|were|got)|(?:the |all |most |many |some |genuine |real |original |proper )*(?:early|earlier|late|later|first|second|third|genuine|real|original|repro|reproduction|fake|copy|factory|works|production) (?:ones|cars|types|parts|examples)|originals|repros|reproductions|copies|fakes|replicas|most of them|all of them|they all|they usually|they normally|they should|(?:should|ought to|supposed to|meant to|(?<!\bi )would) (?:also |always |only |normally |really |all |probably )*(?:have|be|show|come|carry|read|say|had)|(?:i|we) (?:used to have|once had|had (?:a|an|one|two|another|some|them|those)(?! (?:\w+ )?(?:look|go|peek|feel|read|dig|poke|play|lie|friend|mate|torch|try|think|measure|search|rummage|scrape|magnet)))\b|my (?:last|previous|old|first|second|spare) (?:one|car)|the one (?:on|in|at) (?:my|the|his) (?:other|photo|picture|brochure|book|manual|advert|museum|mates|friends)|in the (?:brochure|book|manual|advert|handbook|museum|parts list)|museum car|(?:his|her|their|whose) (?:\w+ )?(?:parts?|car)\b|(?:all|both|any of) my (?:old|previous|other|former) |(?:thread|post|topic|article|video|page|listing|photo|picture|pic) (?:on|in|at|about|with|from) (?!it\b|mine|the (?:back|inside|rear|underside|part))|(?:used to|once) (?:own|have|run|drive)|long gone|^(?:i |we )?sold (?:the|my|that|it|a|them)|(?:someone|somebody|another (?:guy|chap|bloke|member|owner)|some (?:guy|chap|bloke)|a (?:guy|chap|bloke|fellow)) (?:\w+ ){0,4}?(?:asked|had|has|have|was|got|found|posted|sold|wanted|showed|put)|(?:saw|seen) (?:one|some|another|a few|it|them) (?:\w+ ){0,3}?(?:at|in|on|with|go|for|sell|last)|(?:at|in) the museum|the ones? (?:on|in|at|from) (?:ebay|facebook|sale|offer|marketplace|display)\b|the (?:one|ones) (?:on|in|at|from) (?:the|his|her|a|another) (?!bench|car\b|shelf|box|garage|photo\w* (?:i|above|below))|(?:on|off|from) the other car|(?:brochure|show|press|museum|factory demonstrator) (?:car|cars|picture|photo\w*)|all (?:of )?(?:the|those|these) (?:\w+ ){1,4}(?:i|ive|you|that|were|had|have)\b|(?:every|each|any) (?:\w+ ){1,3}(?:i|ive|you)\b|(?:saw|seen|met|counted|passed|spotted) (?:two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|several|lots of|loads of|plenty of|dozens of|some|many) (?:\w+ )?(?:cars|parts|owners)|ever (?:seen|handled|had|owned|saw)|(?!its|thats|whats|heres|theres|todays|hes|shes|lets|whos|wheres)\w{3,}s car (?:has|had|is|was|got|came|wears|carries)|(?:similar to|as|like) (?:the|on the|a|an) (?:\w+ ){0,3}(?:one|ones|type|version|sort)|a mate of mine|friend of mine|the (?!left|right|other|near|off|front|rear|one|only)\w+ ones? (?:was|were|would)\b|(?:they|these|those)(?: \w+)? (?:all|usually|normally|always|mostly|often|generally) |(?:always|normally|usually) (?:have|had|has|are|were|is|come|came|say|show)|^all (?:the |of the |their )?(?!my|these|this|four|three|five|six|two|screws|receipts|bills|invoices|papers|records|holes|round|black|of (?:it|them|mine|this))\w{3,}s\b|for comparison|compared (?:to|with)|unlike (?:my|the|his|a)|generally|normally|usually|typically)\b/;

/** Back to the speaker's own eyes, or own part. */
export const ownEyesCues =
  /\b(?:mine|my one|this one|this part|i (?:can )?(?:see|feel|find|found|measured?|count(?:ed)?|looked|checked|weighed|noticed?)|i ve (?:got|measured|found|counted|looked|checked)|ive (?:got|measured|found|counted|looked|checked)|i make it|i got|on mine|on my (?:car|one)|what i (?:see|have|found)|in fact|to me it|looking at it|the one i have|i have|i ve got)\b/;

/** Wanted, planned or imagined: nothing that was seen. */
export const wishCues =
  /\b(?:wtb|wanted(?! to (?:know|ask|say|share|show))|(?:looking|searching|hunting|on the lookout) (?:for|to (?:buy|find))|in search of|iso|(?:need|want|(?<=\b(?:im|am|were|are|is|hes|shes|still|also|really) )after|(?<=^)after(?= (?:a|an|one|two|some) (?:\w+ ){0,3}(?:parts?|pair|set)\b)|prefer|rather have) (?:a|an|one|ones|some|the|two|three|four|six|to (?:buy|find|fit|get|make|paint|have))\b|want to buy|planning|(?:just |have |ive |i )?ordered (?!by)|on order|next on (?:the|my) list|to ?do list|still to do|jobs? (?:for|left)|\bbringing\b|would (?:love|prefer|fancy)|wouldnt mind|dying for|plan (?:to|on)|going to (?:fit|paint|make|buy|put|drill|get|change|swap|convert)|gonna|intend(?:ing)? to|thinking (?:of|about)|would like|would love|id like|id love|hoping (?:to|for)|tempted to|could (?:fit|make|paint|drill)|swap (?:it|them|mine)? ?for|(?:i|we) (?:might|may) (?:fit|buy|get|try|go for) (?:a|an|some|one|the)|dream(?:t|ed)? (?:of|about)|i (?:want|need|fancy) (?!to (?:know|ask|say|be|see|make|check|find out|identify|understand|tell))|lets (?:suppose|say|assume|imagine)|suppose (?:it|the|that|i|you)|imagine|hypothetical(?:ly)?|(?:i|we)(?: will|ll| shall| am going to| m going to|m going to|d) (?:bring|fit|put|buy|get|make|take|sell|use|drill|weld|paint|order|need|swap|keep an eye|look for|convert|go for)\b|wish (?:i|it|they|mine)|hope (?:it|the|its|that|my|they|mine)|hopefully (?:it|the|its|my|they) (?:will|has|have|is|are)|if only)/;

/** Wanted, dreamt or supposed for the rest of the message, until the speaker comes to what is their own. */
export const fictionCues =
  /\b(?:wtb|iso|^wanted|(?:ich )?suche|gesucht|(?:ich )?(?:brauche|mochte)|je cherche|cherche|ik zoek|zoek|cerco|busco|(?:looking|searching|hunting) for (?:a|an|some|one|two|the|good|original)|in search of|had a dream|dream(?:t|ed)|nightmare|lets (?:suppose|imagine|pretend)|imagine|hypothetically|just kidding|only joking)\b/;

/** The speaker has not had the part before them: what the message holds is somebody's word. */
export const neverSeenCues =
  /\b(?:havent|have not|haven t|hasnt|not|never) (?:actually |even |personally )?(?:seen|had|touched|held|viewed|met|got|collected|picked|been to see)(?: to see)? (?:it|them|one|the (?:car|part|thing)|any)(?: (?:yet|myself|in person|in the flesh|up yet|at all|here yet))|(?:havent|have not) (?:seen|touched|held|viewed) (?:it|them)$|not (?:arrived|here|come|turned up) yet|hasnt (?:arrived|come|turned up)|still in the post\b/;

/** Thanks for what somebody else said. */
export const thanksCues =
  /\b(?:thanks|thank you|cheers|ta|thx|grateful|appreciate) (?:\w+ ){0,3}(?:for|about) (?:the|your|that|all|this)\b/;

/** Nothing was seen, so nothing about it is told. */
export const unseenCues =
  /\b(?:cant|cannot|couldnt|could not|can not|unable to|didnt|havent|not able to|no way to) (?:\w+ )?(?:get (?:behind|under|in|inside|to|at|near|it|them|a look|the)|see (?:if|whether|what|which|how|behind|under|inside|in|it|the (?:back|inside|underside|rear|other|reverse))|reach|check|look(?:ed)?|tell|read|date (?:it|them|this)|make out(?! (?:any|an?)\b)|measured?|turn(?:ed)? it)\b/;

/** Words after which a question is put inside a statement. */
export const embeddedQuestionCues =
  /\b(?:(?:wonder(?:ing|ed)?|ask(?:ing|ed)?|know(?:ing)?|tell(?: me)?|sure|idea|clue|certain|see|say|check|unsure|remember|matter|find out|figure out|work out|out|advise|confirm|curious|clear|question is|care|mind) (?:me )?(?:if|whether|which|what|how|why|when|where|who)|(?:how|where) (?:do|can|would|should|could) (?:i|you|we|one)|how to (?:tell|know|check|see|find)|(?:^|[,.;] ?|\b(?:and|but|so) )(?:what )?if (?!it (?:helps|matters|makes)|that helps|thats (?:any|of)|you (?:ask|want|like|need)|i (?:remember|recall|may|can))(?:it|its|the|mine|they|there|i|you|that|this|these|not)|whether|in case|unless|what about|how about|(?:^|please |could you |can you )compare|differences? between|let me know if|or not$)\b/;
