// Trade words of neighbouring languages and the English word each stands for, from memory, folded (no accents): members
// write in English with the word of home where the English one fails them. Asked only for words no handbook holds.

const byMeaning: Readonly<Record<string, string>> = {
  screw: "schraube schrauben vis schroef schroeven vite viti tornillo tornillos",
  bolt: "bolzen boulon boulons bout bouten bullone bulloni perno pernos",
  stud: "stehbolzen goujon goujons tapeind prigioniero prigionieri prisonieri esparrago",
  nut: "mutter muttern ecrou ecrous moer moeren dado dadi tuerca tuercas",
  hole: "loch locher trou trous gat gaten foro fori agujero agujeros bohrung bohrungen",
  spoke: "speiche speichen branche branches spaak spaken razza razze radio radios rayon rayons",
  rim: "kranz jante cerchio aro",
  wheel:
    "felge felgen rad roue roues jante jantes velg velgen wiel ruota ruote cerchione rueda ruedas llanta llantas",
  leather: "leder cuir pelle cuero piel",
  wood: "holz bois hout legno madera",
  foam: "schaum mousse schuim schiuma espuma",
  plastic: "kunststoff plastik plastique kunststof plastica plastico",
  steel: "stahl acier staal acciaio acero blech tole chapa plaatstaal lamiera",
  alloy: "leichtmetall lichtmetaal lega aleacion",
  aluminum: "alu alluminio aluminio",
  glass: "glas verre vetro vidrio cristal",
  mirror: "spiegel retroviseur retro specchietto espejo",
  smooth: "glatt lisse glad liscio liso",
  rough: "rau rauh rugueux ruw ruvido rugoso aspero",
  black: "schwarz noir noire zwart nero nera negro negra",
  white: "weiss blanc blanche wit bianco bianca blanco blanca",
  gray: "grau gris grise grijs grigio grigia",
  silver: "silber argent zilver argento plata",
  painted: "lackiert peint peinte geverfd verniciato pintado",
  glued: "geklebt colle gelijmd incollato pegado",
  clamp: "klemme klem pince morsetto mordaza",
  width: "breite largeur breedte larghezza anchura",
  length: "lange longueur lengte lunghezza longitud",
  weight: "gewicht poids peso",
  thickness: "dicke epaisseur dikte spessore espesor",
  height: "hohe hauteur hoogte altezza altura",
  round: "rund ronde rond rotondo redondo",
  square: "eckig carre vierkant quadrato cuadrado",
  flat: "plat vlak piatto plano",
  curved: "gewolbt gebogen bombe gebold curvo",
  hollow: "hohl creux hol cavo hueco",
  stitch: "naht couture naad cucitura costura",
  mark: "zeichen marque merk marchio marca",
  narrow: "schmal etroit smal stretto estrecho",
  wide: "breit large breed largo ancho",
  ball: "kugel bille kogel sfera bola",
  nylon: "nilon",
  switch: "schalter interrupteur schakelaar interruttore interruptor",
  dial: "anzeige cadran wijzer quadrante",
  rib: "rippe nervure ribbe nervatura",
  crayon: "kreide craie krijt gesso tiza",
  none: "keine keinen aucun aucune geen nessuno nessuna ninguno ninguna",
};

const meaningOf: ReadonlyMap<string, string> = new Map(
  Object.entries(byMeaning).flatMap(([english, words]) => words.split(" ").map((word) => [word, english])),
);

/** The English word a folded foreign one stands for; undefined when it is not listed. */
export function englishFor(folded: string): string | undefined {
  return meaningOf.get(folded);
}
