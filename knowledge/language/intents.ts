// What the speaker wants, from many ordinary wordings. A table of patterns over each clause's folded words; the
// order of the table settles clauses that could be two things, so the more particular stands first.
import type { Goal } from "../evidence/goal.ts";
import type { Intent } from "./message-reading.ts";

type PlainIntent = Exclude<
  Intent["kind"],
  "goal" | "how-to-check" | "cannot-tell" | "withdraw" | "compare" | "list-variants" | "switch-case"
>;

export const goalPatterns: readonly (readonly [Goal, RegExp])[] = [
  [
    "what-should-it-have",
    /\b(?:(?:what|which)(?: \w+){0,4} (?:should|would|did|ought)(?: \w+){0,4} (?:have|had|has|be on|come with|wear|carry|left|leave|fitted|fit)|(?:what|which) (?:\w+ ){0,3}(?:came|come|was fitted|were fitted|is correct|are correct|is right|are right|belongs?|goes|go|did they (?:fit|use|put)|left the (?:works|factory))(?: \w+){0,4} (?:on|to|for|with|works|factory)|should (?:my|a|an|the|this) (?:\w+ ){0,4}have|what (?:\w+ ){0,2}(?:does|do|would|should|did) (?:my|a|an|the) (?:\w+ ){0,4}(?:have|need|want|get|wear|left|leave|take)|what (?:\w+ ){0,3}(?:should|would|ought to) (?:be|have been|go) (?:on|fitted)|supposed to have|meant to have|what(?:s| is) (?:the )?(?:correct|right|proper) (?:\w+ ){0,3}(?:for|on) (?:my|a|an|the)|what should i (?:be )?(?:look|fit|buy))\b/,
  ],
  [
    "genuine",
    /\b(?:genuine|legit|legitimate|authentic|kosher|bona fide|the real (?:deal|thing|mccoy|one)|(?:is|are|it|they|these|this|that|one|its) (?:it |they |this |that |these |the |a |my )?(?:\w+ )?(?:real|fake|fakes|repro|repros|reproductions?|copy|copies|originals?|replicas?|remakes?|pukka|proper|right un|wrong un)|(?:oem|original|works|factory) or (?:one of )?(?:the )?(?:\w+ )?(?:remakes?|copies|repros)|real or (?:not|fake|repro|copy)|(?:original|oem|factory|works) or (?:\w+ ){0,2}(?:repro|copy|fake|reproduction|aftermarket|not)|(?:repro|copy|fake|reproduction) or (?:\w+ ){0,3}(?:original|real|genuine|oem|factory|works|not)|been had|been done|been sold a pup|ripped off|a wrong one)\b/,
  ],
  [
    "right-for-car",
    /\b(?:(?:right|correct|proper|ok|okay|suitable|good|period correct|appropriate|wrong) (?:\w+ ){0,2}(?:for|to) (?:my|a|an|the|this|that|it|mine)|right for (?:car|year)|(?:does|do|would|will|did|is|are) (?:it|they|this|that|these|the \w+) (?:\w+ )?(?:match|belong|go with|suit|correspond)|belongs? (?:on|to|with) (?:my|a|an|the|this|it)|period correct|correct for|as built|(?:did|would|could|was|were) (?:it|they|this|these|that|my \w+|the car|mine) (?:\w+ )?(?:leave|left|come|came|born|fitted|have been fitted|delivered)(?: \w+){0,3} (?:with|works|factory|on|from new)|what (?:it|the car|she) left (?:the )?(?:works|factory)|original to (?:the|my|this) car|original fitment|left the (?:works|factory) (?:with|like)|is it (?:the )?(?:right|correct|wrong)|are they (?:the )?(?:right|correct|wrong)|the (?:right|correct|wrong) (?:one|ones|type|kind|version)|fits? the (?:year|date|car)|right kind)\b/,
  ],
  [
    "which-variant",
    /\b(?:(?:which|what) (?:one|type|version|variant|kind|sort|mark|generation|style|pattern|\w+(?: \w+)?) (?:of (?:\w+ ){1,3})?(?:is|are|do|have|has|did|would|am|could) (?:this|it|these|they|that|i|we|mine|those|my)|(?:which|what) (?:is|are|have) (?:it|this|these|they|that|those|i|we)\b|which(?: one| type| version| of (?:them|the \w+))?$|(?:what|which) (?:\w+ )?(?:have|ve) i got|identif(?:y|ication|ied|ying)|^id (?:this|these|please|help|needed|on)|\bid (?:this|these|help|my|on|please|for)|(?:help|need) (?:\w+ )?(?:id|identifying|identification)|what (?:is it|are they|it is|they are|this is|these are|i have|ive got|i ve got|i bought|id)|which (?:it is|one it is|they are|one this is|one i have|ones i have|i have)|work out (?:what|which)|figure out (?:what|which)|tell me (?:what|which)|know what (?:it|they|this|these|i)|whats this|what s this|name that|any idea what|can (?:anyone|you|someone|anybody) (?:identify|id|tell me what))\b/,
  ],
];

export const plainIntents: readonly (readonly [PlainIntent, RegExp])[] = [
  [
    "start-over",
    /\b(?:start (?:over|again|afresh|from scratch)|begin again|from the beginning|clear (?:it all|everything|the lot)|reset|forget (?:everything|it all|all of (?:it|that)|the lot)|wipe (?:it|the slate)|scrap (?:it all|everything))\b/,
  ],
  [
    "undo",
    /\b(?:undo(?! (?:\w+ ){0,4}(?:studs?|bolts?|nuts?|screws?|clips?|caps?|fixings?|fasteners?))|take (?:that|it) back|go back(?! to (?:case|question)\b)|step back|revert|back one|cancel that|previous answer was wrong|strike that)\b|^back$/,
  ],
  [
    "list-cases",
    /\b(?:(?:list|show)(?: me)? (?:\w+ )?(?:my |all |open )+(?:cases|questions)|what (?:cases|questions) (?:do i have|are open|have i)|my (?:open )?cases|all my cases|how many cases)\b/,
  ],
  [
    "new-case",
    /\b(?:new (?:case|question|part)|another (?:part|case|question) (?:now|please|to)|different (?:part|case|question)|start (?:a|another) (?:new )?case|next part|open a (?:new )?case|something else now)\b/,
  ],
  [
    "what-do-you-know",
    /\b(?:what (?:do you (?:know|have|think)|have you got|did you (?:understand|note|read)|have i (?:told|said|given)|do you make of it|is known|are the facts)|(?:so far|where (?:do we|does (?:it|this|that)) stand|where are we|summar(?:y|ise|ize)|recap|sum up|status|show (?:me )?(?:the )?(?:facts|ranking|case)))\b/,
  ],
  [
    "photographs",
    /\b(?:(?:what|which|any|how many|more) (?:\w+ ){0,3}(?:photographs?|pictures?|snaps|shots|images)|(?:photographs?|pictures?|shots|images) (?:should|do|to|would|can|shall|of what|i should|that would)|ask (?:\w+ ){0,4}(?:photographs?|pictures?|shots|images)|what (?:should|do|can|shall) i (?:ask|photograph)|what to (?:photograph|ask)|photograph (?:list|checklist))\b/,
  ],
  [
    "what-fits",
    /\b(?:(?:what|which|anything|one|will|would|does|can|could|do)(?: \w+){0,6} (?:fit|fits|bolt on|bolt straight on|go on|swap|interchange)|without (?:drilling|new holes|any drilling|modification|cutting|filling)|interchange(?:able)?|bolt(?:s)? straight (?:on|up)|same holes|fit the (?:same |existing |old )?holes|direct (?:fit|swap))\b/,
  ],
  [
    "where-from-here",
    /\b(?:where (?:do|can|should|would) (?:i|we) (?:go|turn|look)|what (?:next|now|should i do|do i do|would settle it|else (?:can|should|could) i (?:check|look|do|try)|can i do (?:next|now)|would (?:settle|decide|prove) it)|whats next|what s next|next steps?|how (?:do|can) (?:i|we) (?:settle|be certain|be sure|find out for sure|prove))\b/,
  ],
  [
    "sources",
    /\b(?:sources?|where (?:did|do) you (?:get|know|have)|who says|references?|citations?|cite|on what (?:basis|evidence)|whats your (?:source|evidence)|says who|evidence for (?:that|this)|how do you know(?: that| this)?$|prove it|back that up)\b/,
  ],
  [
    "price",
    /\b(?:price|worth|value|valuation|how much (?:is|are|was|for|should|would|do|does|to pay|(?:can|could|might|shall) (?:i|we|you|one) (?:ask|get|charge|want|expect|sell))|what (?:can|could|should|do) (?:i|we) (?:ask|get|charge) for|cost|costs|going rate|fair price|pay for|bargain|over ?priced|fetch|quid|pounds? is|too much)\b/,
  ],
  [
    "help",
    /^(?:(?:please|hi|hello|hey) )?help(?: me)?(?: please)?$|\b(?:what can you do|how does (?:this|it|that) work|how do (?:you|i use)(?: \w+){0,3} (?:work|this|you|bot)|how do i use|instructions|commands|what are you|who are you|what do you do)\b/,
  ],
  [
    "why",
    /^(?:(?:but|and|so|ok|okay) )?why(?: (?:this|that|is that|ask|is (?:this|that|it) (?:important|relevant|needed)|that one|this one|this question|not|so))*$|\b(?:why (?:do you (?:ask|want|need)|are you asking|does (?:that|it|this) matter|this(?: question)?$|is (?:that|this|it) (?:important|relevant)|do you think|would you)|what(?:s| is)? (?:the )?(?:point|reason|relevance)|whats that (?:got to do|for)|how does that help|what does (?:that|it) (?:tell|prove|matter))\b/,
  ],
  [
    "yes",
    /^(?:(?:oh|ah|er|um|well) )?(?:yes|yep|yeah|yup|aye|correct|right|thats right|that is right|it is|they are|it does|they do|it has|there is|there are|sure|indeed|affirmative|confirmed|true|exactly|definitely|absolutely|y|of course|spot on|ja|oui|si)(?: (?:it is|it does|they are|they do|it has|there is|there are|i can|it was|please|sir|indeed|definitely|i think so|mate|of course|thanks|that is right|thats right|one|two|some))*$/,
  ],
  [
    "no",
    /^(?:(?:oh|ah|er|um|well|nah) )?(?:no|nope|nah|negative|not at all|it isnt|it is not|its not|they arent|it doesnt|it hasnt|there isnt|there arent|none|no way|not really|wrong|not so|n|nein|non|definitely not|not that i can see|no sign|nothing|incorrect|false)(?: (?:it isnt|it doesnt|they arent|they dont|it hasnt|there isnt|there arent|none|nothing|i cant|sir|thanks|mate|it is not|it does not|not at all|i dont think so|sign|there|of it|at all|sorry|definitely not))*$/,
  ],
  [
    "small-talk",
    /\b(?:thanks?|thank you|cheers|ta|much appreciated|hello|hi|hey|good (?:morning|afternoon|evening|night)|bye|goodbye|see you|nice one|brilliant|great|lovely|wonderful|fantastic|awesome|well done|good bot|lol|haha|how are you|happy (?:christmas|new year)|welcome|congrat\w*|tia)\b/,
  ],
];

export const cannotTell =
  /\b(?:cant tell|cannot tell|can not tell|cant say|cannot say|couldnt (?:say|tell)|could not (?:say|tell)|unable to (?:tell|say|see)|impossible to (?:tell|say|see)|dunno|dont know|do not know|didnt (?:check|look|notice)|no idea|no clue|not a clue|havent a clue|idk|beats me|not sure(?! but)|unsure|havent (?:looked|checked|measured|weighed|got (?:it|the car) here|had a look)|have not (?:looked|checked|measured)|(?:cant|cannot|couldnt) (?:really |quite |properly |even )?(?:see|get|reach|check|measure|look|make (?:it|that) out)(?: (?:it|that|them|there|in there|behind|inside|underneath|(?:at|to|near|behind|under) (?:it|that|there|them)|from here|far enough|whether|if|what|which|clearly|well enough|anything))*$|(?:cant|cannot|couldnt) (?:really |quite |properly )?(?:see|make out|tell|check) (?:if|whether|what|which|how)|hard to (?:say|tell|see)$|pass$|skip(?: (?:it|this|that))?$|next question|(?:dont have|havent got|have no|havent) (?:a |an |any |the |my )?(?:\w+ )?(?:calipers?|vernier|micrometer|scales?|ruler?|tape(?: measure)?|magnet)(?: (?:here|to hand|with me|at the moment|right now|yet))?$|dont remember|cant remember|who knows|not visible from|need to (?:take|get) (?:it|the) (?:\w+ )?off|would have to (?:take|remove)|too (?:dirty|rusty|dark|worn) to (?:tell|see|read)|illegible|unreadable)\b/;

export const howToCheck =
  /\b(?:how (?:do|can|would|should|could) (?:i|you|we|one) (?:check|tell|see|find out|measure|know|look|test|weigh|get at|recognise|recognize|spot|find)|how to (?:check|tell|measure|see|look|find|test|know|recognise|spot)|how (?:is|are) (?:it|that|this|they) (?:checked|measured)|where (?:do i|should i|exactly|to|would i|can i) (?:look|find|measure|is it)|where (?:is|are|would) (?:it|that|the|they)|what (?:am i looking for|should i look for|do i look for|does (?:it|that|a|the) (?:\w+ ){0,3}look like|do you mean)|how does (?:one|it|that) look|show me (?:how|where|what)|explain|what is (?:a|an|the|meant by)|whats (?:a|an|the|meant by)|what are|how do i (?:do|get) (?:that|this|it)|measured? (?:from )?where|where from)\b/;

export const withdraw =
  /\b(?:forget|ignore|disregard|withdraw|retract|take back|never mind)(?: \w+){0,2} (?:what i (?:said|told)|that|about|the|my|it|this|last)|\b(?:delete|remove|drop|scrap|cancel|leave out|strike) (?:what i (?:said|told)|that(?: one| answer| fact)?$|(?:the|my) (?:last |previous )?(?:answer|fact|report|reading))|never ?mind|(?:that|it) was (?:wrong|a mistake|rubbish|nonsense)|i was wrong about|i made a mistake (?:about|with)|disregard$/;

export const compare =
  /\b(?:compare|comparison|difference(?:s)? between|differs? from|different from|tell (?:a |an |the |them |one )?(?:\w+ ){0,6}(?:from|apart)|versus|vs|distinguish|what separates|which is better)\b/;

export const listVariants =
  /\b(?:(?:list|show)(?: me)? (?:all |the |every )*(?:\w+ )?(?:variants?|versions?|types?|kinds?)|(?:what|which|how many) (?:\w+ ){0,2}(?:variants?|versions?|types|kinds|sorts|varieties)(?: of(?: \w+){0,3})? (?:are there|were there|exist|existed|did they|do you know|were made|were fitted|is there|there are|there were)|(?:what|which) parts (?:do you (?:know|cover|have)|are (?:there|in (?:here|it|the handbook))|can you (?:identify|tell|do))|what (?:are|were) the (?:different |various |possible )?(?:variants?|versions?|types|kinds|options))\b/;

export const switchCase =
  /\b(?:(?:(?:case|question)(?: number)?|(?<=^|\bto )number) (?:no )?(?<number>\d{1,3}|one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve)|(?:switch|go|back|change) (?:\w+ )?to (?:case |the )?(?<ordinal>first|second|third|\d{1,3}))\b/;
