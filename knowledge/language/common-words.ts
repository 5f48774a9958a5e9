// Everyday English words, from memory. They are never taken for a misspelt trade word: "though" is not "rough",
// "last" is not "cast". A word listed here still matches a handbook that uses it exactly.

const listed = `
a able centre center about above accept across act actual actually add advance advert advice after afternoon again against age ages ago agree ah aha ahead ain't air
alike all allow almost alone along already alright also alternative although always am amazing among amount an and angry another answer answers any anybody anyhow
anymore anyone anything anyway anywhere apart apologies apparently appear appears appreciate appreciated are area aren't argue around arrive arrived as ask asked asking
asks assume assumed at attached attempt auction available average avoid aware away awful awkward back bad badly bag bank bare barely bargain barn based
basic basically basket battle be bear beat beautiful because become bed been beer before beg began begin behind being believe belong belongs below bench
beside best bet better between beyond bid big bigger bike bill bin bit bits bloke blow board boat body book books boot border bore boss
both bother bottle bottom bought bound bow box boy boys brand bread break breaker breath brief bright bring broke broken brother brought budget buff
build building buildings builds bunch burn burnt bus business busy but buy buyer buying by bye call called calls came camera can cannot can't car card
cards care careful carefully carry cars case cases cash cat catch cause caused cellar certain certainly chance change changed changes chap chaps charge chase chat cheap
cheaper check checked checking cheers child children choice choose chose church circle city claim claimed claims clean cleaned cleaner cleaning clear clearly clever climb
clock close closed closely closer cloth clothes club clue coal coast coat code coffee cold collect collected colleague come comes coming comment comments common
company compare compared comparing complete completely computer concern concerned condition confess confirm confirmed confuse confused confusing consider considered
contact continue control cook cool copied copies copy cord corner correct correctly cost costs cough could couldn't count country couple course cousin cover
covered cracked crazy cross cry curious current currently customer cut dad daft daily damage damaged damn dark data date dated dates daughter day days
dead deal dealer dealers dear death decent decide decided deep definite definitely delay deliver delivered depend depends describe described description detail details
did didn't die died differ difference differences different difficult dig dinner direct direction dirt dirty disagree discuss dislike display distance
do doctor does doesn't dog doing dollar done don't door double doubt down dozen draw drawer dream dress drink drive driver driveway driving drop
dropped dry due dug dull dumb dunno during dust each ear earlier earliest early earth ease easier easily east easy eat edit effect effort eight either
else email empty end ended ends engine enjoy enough entire entirely equal especially euro euros even evening ever every everybody everyone everything
everywhere evidence exact exactly examine example excellent except excited excuse exist expect expected expensive expert experts explain extra eye eyes
face fact factory facts fail failed fair fairly fake fall false familiar family fancy far fast fat father fault favour fear feel feeling feels fell fellow felt
few field fight figure figures file fill filled final finally find finding fine finger fingers finish finished fire first fish fit fits fitted fitting five fix fixed flash
flat flea floor fly folk folks follow followed following food fool foot for force forget forgot form former forth forum forward fought found four free fresh
friday friend friends from front fuel full fully fun funny further future game garage garden gather gave general generally genuine get gets getting giant gift girl
give given gives giving glad glance go god goes going gone good goodness google got grand grandad great grateful grew ground group grow guess guide guy guys
habit had hadn't hair half hall hand handed hands handy hang happen happened happens happy hard hardly has hasn't hat hate have haven't having he head
hear heard heart heat heavily held hell hello help helped helpful helping helps hence her here here's hers hesitate hey hi hidden hide high higher him his history
hit hold holding holds holiday home honest honestly hope hopefully hoping horse hot hour hours house how however huge human hundred hung hunt hurry hurt husband
i ice idea ideas identify idiot if ignore ill image images imagine immediately important impossible improve in inch inches include included including indeed
info information inquire instead instruct intend interest interested interesting into is isn't issue issues it item items its it's itself jack job
join joined joint joke journey judge jumble jump june just keen keep keeper keeping keeps kept kettle key kick kid kids kill kind kinda kinds king kit
kitchen knew know knowing knowledge known knows label lack lad lads lady laid land language large largely last late lately later latest laugh law lay lead leader
learn learned learnt least leave leaves leaving led left less lesson let lets letter letters level liar lie life lift light lights like liked likely likes limit
line lines link list listed listen listing little live lived lives living load loads local locate located location lock logic london long longer look looked looking
looks loose lorry lose loss lost lot lots loud love loved lovely low lower luck lucky lunch mad made magazine mail main mainly major make maker makes making
man manage managed manner many march mark marked marker market marks mass match matched matches mate mates matter matters may maybe me mean meaning means
meant meet member members memory men mention mentioned mess message messages met middle might mile miles mill mind minds mine minor mint minute minutes miss missed
mistake mixed model models modern moment monday money month months mood more morning most mostly mother mount mouth move moved moving much mum muddy must
my myself name named names narrow nature near nearby nearly neat necessary need needed needs neighbour neither never new newer news next nice night nine no
nobody none noon nor normal normally north nose not note noted notes nothing notice noticed noting now nowhere number numbers nut oblige obvious obviously occasion odd of
off offer offered office often oh oil ok okay old older on once one ones only onto open opened opinion opinions opposite or order ordered ordinary
original originally originals other others ought our ours out over own owned owner owners owns pack page paid pain paint pair panel panels paper papers parcel
parents park part particular partly parts party pass passed past patch patience pay pays peace people perfect perfectly perhaps period person personally phone photo
photograph photographs photos pic pick picked picks pics picture pictures piece pieces pile place placed plain plan plane plans plant plate play please pleased plenty
plug plus pm pocket point pointed pointing points police polite poor pop popped position possible possibly post posted poster posts pound pounds pour power practice
prefer present press presume pretty previous previously price prices pride print prior private prize probably problem problems process produce produced product
project promise proof proper properly proud prove proved public pull pulled purchase purchased pure purpose push put puts quality question questions quick quickly quiet
quite quote race rack rain ran range rare rarely rate rather reach react read reader reading ready real really rear reason reasonable reasons rebuild recall
receive received recent recently reckon recognise record records red refer regard regards register relevant remain remember remembered remind remove removed removing
repair repaired replace replaced replacement reply report research respond rest restore restored restorer restoring result results return returned reveal rich rid ride
right ring rise risk river road rock role roll room rough roughly round row rub rubbish rule rules run running runs rush rust rusty sad safe said sake sale sales
same sand sat saturday save saw say saying says scale scared school scrap scratch screen sea search season seat second secret see seem seemed seems seen sees self sell
seller sellers selling send sends sense sent separate serial serious seriously serve service set sets setting seven several shade shall shame shape share sharp
she shed sheet shelf shine ship shipped shirt shock shoe shop shops short shot should shouldn't shout show showed showing shown shows shut sick side sides sight sign silly
similar simple simply since sir sister sit site sitting six size sized skip sky sleep slice slight slightly slip slow slowly small smaller smart smell smile snow so
social sofa soft sold some somebody somehow someone something sometimes somewhere son soon sore sorry sort sorts sought sound sounds source south space spare spares spark
speak special specific specifically spell spend spent spirit split spoke sport spot spotted spread spring square staff stage stair stamp stand standard standing stands star
stare start started starting starts state stated statement states station stay steal steam steep step steps stick still stock stole stone stood stop stopped store stories
storm story straight strange street strong struck stuck study stuff stupid style sub such sudden suddenly suggest suit summer sun sunday supplied supply suppose
supposed supposedly sure surely surface surprise surprised swap swear swears sweat sweet swim switch table tail take taken takes taking tale talk talking tall taste taught
tea teach team tear tell telling tells ten tend terms test tested than thank thanks that that's the their theirs them then theory there therefore there's these
they thick thin thing things think thinking third this those though thought thousand three threw through throw thrown thursday thus tick tidy tie tight till time
times tip tired title to today together told tomorrow ton tone tongue tonight too took tool top topic toss total totally touch touched tough toward towards town
track trade train travel treat tree trial trick tried tries trim trip trouble truck true truly trust truth try trying tuesday turn turned turns tweak twice twist two type
types ugly um uncle under understand understood unfortunately unit unknown unless unlike unsure until unusual up update updated upon us use used useful user uses
using usual usually vague valuable value van various vendor version versions very via video view views village visible visit visual voice wait waiting wake walk wall
want wanted wanting wants war warm warn was wash wasn't waste watch water way ways we weak wear weather web wednesday week weekend weeks weigh weight weird welcome
well went were weren't west wet what whatever what's when where whether which while white who whole who's whose why wide wife wild will win window winter wipe wire
wise wish with within without woman women won wonder wondered wondering won't wood word words work worked working works world worn worried worry worse worst worth would
wouldn't wow write writing written wrong wrote yard yeah year years yep yes yesterday yet you young your yours yourself zero
`;

export const commonWords: ReadonlySet<string> = new Set(
  listed
    .split(/\s+/)
    .filter((word) => word.length > 0)
    .map((word) => word.replace(/'/g, "")),
);

/** Words that carry no meaning inside a term: they never count in a window of words. */
export const glueWords: ReadonlySet<string> = new Set(
  "a an the of with is are it its was were on in at to for by has have had been be this that my im ive got do does did can could will would and so very quite just really bit all".split(
    " ",
  ),
);

/** Everyday words that are trade words first. */
const tradeWords: ReadonlySet<string> = new Set(["rough", "wood", "cross"]);

/** Whether a word alone is too general to name a state. */
export function isGeneralWord(word: string): boolean {
  return generalWords.has(word) || (commonWords.has(word) && !tradeWords.has(word));
}

/** Words too general to name a state by themselves; they need the feature named or asked in the same breath. */
export const generalWords: ReadonlySet<string> = new Set(
  `yes no none present absent visible there missing small large big little long short high low tall early late later old new original genuine right left front rear back
  one two three four five six seven eight nine ten zero first second third only normal standard other plain light dark thin thick wide narrow deep shallow open closed
  full half single both clear hidden good bad loose tight hard soft inside outside top bottom upper lower side different same part type kind version mark marks number
  set fitted without with not never nothing something like style center middle end edge all any some odd black white red blue green silver gray brown yellow gold cream
  line point hole gap body surface cover common usual unknown dated stamp letter figure made color car cast round square molded drilled drill original even soft straight sharp flat paint metal miles mile tape steel blank bare spare naked`.split(
    /\s+/,
  ),
);
