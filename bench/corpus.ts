/** Realistic recipes in any number, always the same ones. */

const flours = ['wheat flour', 'whole rye flour', 'bread flour', 'spelt flour', 'cornmeal', 'buckwheat flour'];
const liquids = ['water', 'whole milk', 'buttermilk', 'orange juice', 'whipping cream', 'dry cider'];
const fats = ['butter', 'olive oil', 'lard', 'sunflower oil'];
const sweets = ['white sugar', 'brown sugar', 'honey', 'maple syrup', 'dates'];
const more = [
  'walnuts',
  'sunflower seeds',
  'leeks',
  'carrots',
  'onions',
  'beef',
  'chickpeas',
  'raisins',
  'almonds',
  'cheddar',
];
const spices = ['fine salt', 'ground cinnamon', 'ground nutmeg', 'black pepper', 'ground ginger'];
const products = ['dough', 'filling', 'batter', 'soaker', 'custard', 'crumble', 'sauce', 'glaze', 'broth', 'paste'];
const places = ['harbour', 'lantern', 'chapel', 'orchard', 'signal', 'quayside', 'mill', 'ferry', 'cooper', 'tide'];
const times = ['5 min', '10-15 min', '20 min', '1 h', '45-60 min', '2-3 h'];

/** Numbers that look random and are the same on every machine (a 32-bit xorshift generator). */
function numbersFrom(seed: number): (below: number) => number {
  let state = (seed * 2_654_435_761 + 1) >>> 0 || 1;
  return (below) => {
    state ^= state << 13;
    state ^= state >>> 17;
    state ^= state << 5;
    state >>>= 0;
    return state % below;
  };
}

/** Recipe number `index`: two to five products of three to seven foods, about forty lines. */
export function recipeText(index: number): string {
  const next = numbersFrom(index + 1);
  const pick = <T>(list: readonly T[]): T => {
    const item = list[next(list.length)];
    if (item === undefined) throw new Error('an empty list');
    return item;
  };
  const place = pick(places);
  const lines = [
    `recipe The ${place} ${pick(products)} number ${index}`,
    'source Pennymoss Quay, the kitchen book',
    `serves ${2 + next(10)}`,
    'note Better on the second day.',
    '',
  ];
  const makes = 2 + next(4);
  for (let make = 0; make < makes; make++) {
    lines.push(`make ${products[(index + make) % products.length]}`);
    if (make > 0) lines.push(`  all ${products[(index + make - 1) % products.length]}`);
    const foods = new Set([
      pick(flours),
      pick(liquids),
      pick(fats),
      pick(sweets),
      pick(more),
      pick(more),
      pick(spices),
    ]);
    for (const food of foods) lines.push(`  ${amountOf(food, next)} ${food}`);
    const [first = '', second = '', ...rest] = foods;
    lines.push(
      `  hands ${pick(times)}: Stir the ${first} and the ${second} together, then the ${rest.join(', the ')}.`,
    );
    if (next(2) === 0) lines.push(`  wait ${pick(times)} at ${4 + next(20)} C: Leave to stand, covered.`);
    if (next(2) === 0) lines.push(`  hob ${pick(times)}: Warm gently until it thickens.`);
    if (next(3) === 0) lines.push('  lose 1 % as water');
    lines.push('');
  }
  lines.push(`  oven ${pick(times)} at ${160 + 10 * next(7)} C: Bake until golden.`, '  keeps 3 d at 4 C, covered', '');
  return lines.join('\n');
}

function amountOf(food: string, next: (below: number) => number): string {
  if (spices.includes(food)) return `${1 + next(12)} g`;
  return next(8) === 0 ? `${1 + next(3)} 1/2 kg` : `${10 * (1 + next(60))} g`;
}

/** A file of so many lines: recipe under recipe, the last one cut off where the file ends. */
export function longFile(lines: number): string {
  const text: string[] = [];
  for (let index = 0; text.length < lines; index++) text.push(...recipeText(index).split('\n'));
  return `${text.slice(0, lines).join('\n')}\n`;
}
