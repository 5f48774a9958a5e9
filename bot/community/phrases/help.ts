/** The community's own words, as help names them: a line a matter, for those who can say them. */

export const helpHere = "In this community:";
export const helpForAll: readonly string[] = [
  "a person’s answer: ask a keeper · pins · pins about WORDS · keepers",
  "what was seen: record an observation · observations · when did PART change · cars wanted · lead times · open questions",
  "your own: car sheet · share car sheet · mine · export mine · erase mine",
];
export const helpKeepersLead = "What keepers say:";
export const helpForKeepers: readonly string[] = [
  "what waits: queue · answer ID: … · ask back ID: … · close ID because … · observation ID · accept observation ID · decline observation ID because … · ask about observation ID: …",
  "pinned answers: pin this: … · pin for the question …: … · pin ID · replace pin ID: … · review pin ID by … · withdraw pin ID because …",
  "people and records: invite a contributor · sign in (the desk on the web) · audit",
];
export const helpForOwners =
  "owners: invite a keeper · invite an owner · dismiss NAME · settings · set units to imperial · set handbooks to … · forget cases after 24 months";
