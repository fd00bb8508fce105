/**
 * English words that stand one slip from a word that opens a line. What is a word of its own is never taken for a
 * mistyped other: `hops` may be hops. From the word lists of SCOWL up to size 50 (American, British), by the rule in
 * `repair.ts`; coarse words are left out.
 */
export const englishNeighbours: ReadonlySet<string> = new Set(
  (
    'abort abut ad adds ado ads aid ail alb ale ally and arts as ate await awaken awakes aware awl awoke baaed ' +
    'backed bait bake baker bakes baled balked ball ban bands banked bared barked based bases basic basics basil ' +
    'basin basins basked basks bass bast bate bated bay bayed be beaked beast beat beeps beet belt bent beset ' +
    'besot bests bet bets bib bid big biked bind bins bit bob bold boom bout boy braces braked broom bun bust ' +
    'buy bye cake caked calf call cap carts cave checks cheek chick chock chuck close coarse cob cold contain ' +
    'cop cote counts county coup coursed courser courses court coven crest crop cub cud cue cultured cultures ' +
    'cups cur curse cusp cut dad dale dame dare darning darts data dated dates daze deeps dimes din dip dives ' +
    'doom dose dote drip droop drops earning eave ell emery even ever fake faked fall fate fee fer fest fin ' +
    'fives flee flood fob fold fond foods fool foot for ford fount freed freer frees fret fuse gait gall gas ' +
    'gate gave gibes gin give given givens gob gold good graces groom ha had hag hags hake hale hall halo halt ' +
    'ham hams hand handy hangs hanks harts hash hasp hat hate hats have haw haws hay hays heck held her hes ' +
    'hinds hip his hives ho hobo hobs hod hoe hoed hog holds hole holed holy hood hop hos hose hot how hub ill ' +
    'in jeeps jest jives job keels keens keep keyword kin kitchens lake lands languages late lest limes lip ' +
    'lives lob lobe lode loge lone loom loose lope lore loser loses loss lost louse love mace made maker makes ' +
    'male mall mane mare marts mas mate maze men mend menus mike mimes mob mood mote mount muse my naked nave ' +
    'neighs nerve nerves nest nip node none nope nor nose not noted notes oar oasis odd of oh ok old omen on ' +
    'open orb orc ore our ovens over ow ox oxen pacts pall pants par pares parks pars part party pas pasts pate ' +
    'pats pave pea pear peeps peer peg pen pep perk perm pert pest pet pew photon photos pier pin pip ports pose ' +
    'prop pup races rake raked rate rave recipes recite rent reset rests rimes rip roam rob rood roof rook rooms ' +
    'roomy root rose rote ruse rust safe sage sake sale salve same sand sands sane sap sate saved saver saves ' +
    'seeps selves sere serge series served server servers servo servos shave sin sip slap slave snap soap sob ' +
    'sold sourced sources staid stands stank stave strand stretchy suave sue sup swab swag swam swamp swan swaps ' +
    'swat sway swerve swerves take tall tames tap tarts test ti tic tides tie ties tiles time timed timer timers ' +
    'tin tines tips tires told tomes top tor tote trace traced tracer tracers tracks tracts trades trances tree ' +
    'trip truces up us used user uses valiant variants veeps verve very vessels vest vote vulture waft waif wail ' +
    'waist waits wake waked wall wands waning want warding warming warnings warping warring wart warts was watt ' +
    'wave weeps weigh weight weights west whit win wit wives wood woven wrest writ yest yip yup zest zip zoom'
  ).split(' '),
);
