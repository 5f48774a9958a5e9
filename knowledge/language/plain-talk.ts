// Words that talk is made of whatever it is about: function words, what people say when they look at a part, greetings.
// From memory. A word that is neither here nor in the handbook is foreign to the part: much of it marks chatter.

const listed = `
a an the this that these those it its they them their theirs he she him his her hers we us our ours you your yours i me my mine myself im ive id ill
youre hes shes were theyre thats theres heres whats whos itll itd one ones some any no none nothing anything something everything someone anyone somebody
anybody everybody everyone nobody all both each every either neither other others another such same own few several many more most less least much lot lots
bit couple half enough whole
and or but nor so yet because cause cos as if than then though although while whereas unless until till since whether when where why how what which who whom whose
of in on at to from by with without for into onto out off up down over under underneath beneath below above behind before after between through across along around round about
near next against towards toward inside outside within beside besides per via like unlike except despite during top bottom side sides back front rear end ends edge middle
left right upper lower inner outer nearside offside face facing
is are was were be been being am do does did done doing has have had having can could will would shall should may might must cannot
isnt arent wasnt werent dont doesnt didnt hasnt havent hadnt cant couldnt wont wouldnt shouldnt aint not never
get gets got getting give gives gave given go goes going gone went come comes came coming make makes made making take takes took taken taking put puts
see sees saw seen seeing look looks looked looking feel feels felt feeling find finds found finding show shows showed shown showing say says said saying read reads reading
tell tells told count counts counted measure measures measured measuring weigh weighs weighed check checks checked checking think thinks thought believe reckon guess suppose
know knows knew want wants need needs seem seems seemed appear appears call calls called hold holds held holding sit sits stand stands stood run runs
turn turned turns pull pulled push pushed press pressed tap tapped try tried touch touched clean cleaned wipe wiped scrape scraped rub rubbed scratch scratched
have use used using keep keeps kept leave leaves left let start starts begin begins stop stops stuck stay stays help mean means meant post posted ask asked add
very quite rather pretty really just only even also too still already again now here there yes yeah yep yup no nope nah ok okay well oh ah um er hmm right sure maybe perhaps
probably possibly definitely certainly clearly obviously actually basically apparently honestly simply almost nearly about roughly approximately exactly barely hardly slightly
fairly totally completely entirely fully mostly mainly partly generally properly firmly evenly twice once first second third last later early ago always usually often sometimes
good bad better best nice fine great little small big large long short high low wide narrow thick thin deep shallow old new different proper plain clear visible present missing
able kind kinda sort sorta type way thing things stuff bits piece pieces part parts number numbers figure figures mark marks marked marking letter letters word words colour color
size shape form bottomline please thanks thank cheers ta hi hello hey evening morning afternoon all folks guys gents mate mates sir dear everybody sorry regards help opinion opinions
photo photos photograph photographs pic pics picture pictures attached above update edit ps btw iirc afaik imo imho tia lol haha ha ffs fwiw
car cars torch light magnet tape ruler calipers caliper vernier scales scale finger fingers nail thumb hand hands eye eyes eyeball glasses magnifier mirror bench garage
took off removed unbolted unscrewed undid lifted pulled turned flipped held against cleaned today tonight yesterday finally closer close closely careful carefully properly
mm cm inch inches kg g grams kilo kilos lb lbs oz pound pounds metre metres about circa approx thereabouts
und ist sind der die das ein eine mit ohne nicht kein keine von im am auf hat sehr auch aber oder ich mein meine wie
le la les un une des du de et est sont avec sans pas dans sur mon ma bonjour merci salut
het een en zijn met zonder niet geen van mijn op il lo gli con senza non sono mio mia ciao grazie el los las una es son sin mi hola gracias y
`;

export const plainTalk: ReadonlySet<string> = new Set(listed.split(/\s+/).filter((word) => word.length > 0));
