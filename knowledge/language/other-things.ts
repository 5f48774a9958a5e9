// Things that have the same materials and colours as a part and are not it: the rest of a car, the household, animals,
// clothes, people. Everyday English, from memory, one number only. Whether a handbook's own part or feature is called so
// is looked up where the list is asked.

const listed = `
bonnet hood boot trunk lid bumper grille grill windscreen windshield window seat carpet mat headlining headliner door card sill bulkhead floor floorpan chassis subframe axle hub
engine motor gearbox clutch exhaust manifold carburettor carb radiator hose pipe pump tank alternator starter battery fuse wiring speaker radio stereo cassette aerial antenna
tyre tire valve brake disc drum pad caliper damper spring headlamp headlight taillight lamp light bulb indicator plate numberplate roof hardtop tonneau sunvisor visor
gearknob gearstick handbrake pedal console glovebox ashtray lighter belt armrest cushion upholstery trim trailer caravan van truck lorry bus taxi tractor motorbike moped scooter bike bicycle
boat canoe kayak ship plane train drone helmet towbar jack wiper washer horn key lock bolt nut screw washer spanner hammer drill saw bench vice tool toolbox
house home shed garage barn roof wall fence gate garden patio lawn drive driveway road street square bridge pub church museum hotel campsite beach hill field farm office shop supermarket
kitchen bathroom bedroom sofa chair table desk bed lamp cupboard shelf drawer door fridge freezer oven kettle toaster dishwasher television tv telly phone computer laptop printer tablet camera
floor ceiling stairs window curtain carpet rug tile bath sink tap mug cup glass plate bowl fork spoon knife pan pot tin bottle box crate bag
shirt jumper jacket coat trousers jeans shoe boot sock glove hat scarf belt skirt dress suit tie watch ring glasses wallet purse
dog cat horse cow sheep pig hen duck bird parrot pigeon goose mouse rat spider wasp bee fish labrador puppy kitten
wife husband son daughter kid child baby father mother dad mum brother sister uncle aunt nephew niece boss neighbour neighbor friend mate colleague grandson granddaughter
bloke chap lad guy man woman lady electrician plumber builder painter postman vicar doctor dentist
tea coffee beer pint wine cake bread cheese sandwich ice cream biscuit sugar milk soup chips dinner lunch breakfast
knee tooth hip elbow wrist beard
weather rain snow wind ice sun summer winter weekend holiday night day morning evening week month year
job wedding divorce party concert game match film book paper magazine thread post site forum question answer story joke
workshop bodyshop paintshop paint primer sander compressor
`;

const things: ReadonlySet<string> = new Set(listed.split(/\s+/).filter((word) => word.length > 0));

/** Whether a stem names such a thing. */
export function isOtherThing(stem: string): boolean {
  return things.has(stem);
}
