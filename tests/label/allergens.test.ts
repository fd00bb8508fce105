/** What is said of allergens, and what becomes of promises. */
import { describe, expect, test } from 'vitest';
import { sentence } from '@quern/text';
import { MARKETS } from '@quern/views';
import { labelText, allergenSentences } from './said.js';
import { compiled, foods, labelled } from './world.js';

const BREAD = `recipe Quay Loaf
gives 2 loaves
make loaf
  500 g strong wheat flour
  20 g butter
  optional 30 g walnuts
  10 g sesame seeds
  or 10 g poppy seeds
  330 g water
  hands 10 min: Knead.
  oven 35 min at 230 C: Bake.
  lose 60 g as water
`;

const names = (list: readonly { readonly name: string }[]): string[] => list.map(({ name }) => name);

describe('allergens', () => {
  test('of what goes in are contained; of what may go in, may be', () => {
    const { allergens } = labelled(BREAD).value;
    expect(names(allergens.contains)).toEqual(['wheat', 'milk', 'sesame']);
    expect(names(allergens.mayContain)).toEqual(['walnut']);
  });

  test('of an alternative may be contained', () => {
    const { allergens } = labelled(BREAD.replace('10 g poppy seeds', '10 g chopped almonds')).value;
    expect(names(allergens.mayContain)).toEqual(['walnut', 'almond']);
    expect(allergens.mayContain[1]?.because[0]?.why).toBe('alternative');
  });

  test('of a food that nobody knows cannot be said', () => {
    const { allergens, alerts, complete } = labelled(BREAD.replace('butter', 'frobnut paste')).value;
    expect(names(allergens.cannotSay)).toEqual(['frobnut paste']);
    expect(alerts[0]).toMatch(/Not in the food table: frobnut paste/);
    expect(complete).toBe(false);
  });

  test('of a food that is known in part are contained as far as they are known, and the rest cannot be said', () => {
    const partly = foods.names().flatMap((name) => {
      const answer = foods.find(name);
      const known = answer.kind === 'found' ? answer.match.food.allergensAtLeast : undefined;
      return known?.includes('milk') ? [name] : [];
    });
    expect(partly.length).toBeGreaterThan(0);
    const { allergens } = labelled(BREAD.replace('20 g butter', `20 g ${partly[0]}`)).value;
    expect(names(allergens.contains)).toContain('milk');
    expect(names(allergens.cannotSay)).toEqual([partly[0]]);
  });

  test('that a kitchen or a food declares as traces may be contained, and say why', () => {
    const text = `${BREAD.replace('20 g butter', '20 g house spread')}
food house spread
  per 100 g energy 2000 kJ, fat 50 g, carbohydrate 5 g, protein 4 g
  contains milk
  traces peanuts

kitchen bakehouse
  traces almonds, soya
`;
    const { kitchens } = compiled(text);
    const { allergens } = labelled(text, { kitchens }).value;
    expect(names(allergens.mayContain)).toEqual(['peanuts', 'soybeans', 'walnut', 'almond']);
    expect(allergens.mayContain.map(({ because }) => because[0]?.why)).toEqual([
      'traces',
      'kitchen',
      'optional',
      'kitchen',
    ]);
  });

  test('are named as each market names them', () => {
    const contains = (market: (typeof MARKETS)[number]): string[] =>
      names(labelled(BREAD, { market }).value.allergens.contains);
    expect(contains('us')).toEqual(['milk', 'wheat', 'sesame']);
    expect(contains('au')).toEqual(['wheat', 'milk', 'sesame', 'gluten']);
    expect(contains('ca')).toEqual(['milk', 'sesame', 'wheat']);
    expect(contains('jp')).toEqual(['wheat', 'milk', 'sesame']);
    expect(contains('none')).toEqual(['wheat', 'milk', 'sesame']);
  });

  test('follow the day: sesame is a class of the United States since 2023, coconut is none since 2025', () => {
    // FASTER Act 2021; FDA guidance, edition 5 of 6 January 2025.
    const of = (text: string, day: string): string[] =>
      names(labelled(text, { market: 'us', day }).value.allergens.contains);
    expect(of(BREAD, '2022-06-01')).toEqual(['milk', 'wheat']);
    const coconut = BREAD.replace('20 g butter', '20 g desiccated coconut');
    expect(of(coconut, '2024-06-01')).toContain('coconut');
    expect(of(coconut, '2026-06-01')).not.toContain('coconut');
  });

  test('of a family that a market knows by species ask for the species', () => {
    const soup = (shellfish: string): string =>
      `recipe Bisque\nmake bisque\n  200 g ${shellfish}\n  500 g water\n  hob 20 min: Simmer.\n`;
    expect(names(labelled(soup('prawns'), { market: 'jp' }).value.allergens.contains)).toEqual(['shrimp/prawn']);
    expect(labelled(soup('lobster'), { market: 'jp' }).value.allergens.notes.join()).toMatch(/lobster.*say which/);
  });

  test('sulphites are named though their amount is not known, with the threshold', () => {
    const { value } = labelled('recipe Sauce\nmake sauce\n  200 g red wine\n  hob 10 min: Boil.\n');
    expect(names(value.allergens.contains)).toEqual(['sulphites']);
    expect(allergenSentences(value).join(' ')).toMatch(/10 mg\/kg/);
  });

  test('no label of any market says that anything is free from something', () => {
    for (const market of MARKETS) {
      const text = labelText(labelled(BREAD, { market }).value);
      expect(text).not.toMatch(/free[ -]from/i);
      expect(text).toMatch(/has not been shown to be absent/);
    }
  });
});

describe('promises', () => {
  const judged = (promise: string, text = BREAD) => {
    const { value, diagnostics } = labelled(text.replace('gives 2 loaves', `gives 2 loaves\n${promise}`));
    const [one] = value.promises;
    return {
      verdict: one?.verdict,
      against: one?.against.map(({ food }) => food),
      codes: diagnostics.map(({ code }) => code),
      said: diagnostics.map(sentence),
    };
  };

  test('that an ingredient breaks are contradicted, with the line', () => {
    const { verdict, against, codes } = judged('free of milk');
    expect(verdict).toBe('contradicted');
    expect(against).toEqual(['butter']);
    expect(codes).toContain('A01');
  });

  test('that an optional line or an alternative breaks are contradicted, by compiler and label alike', () => {
    const optional = judged('free of nuts');
    expect(optional).toMatchObject({ verdict: 'contradicted', against: ['walnuts'] });
    expect(optional.codes).toContain('A01');
    const other = BREAD.replace('optional 30 g walnuts', '30 g sunflower seeds\n  or 30 g walnuts');
    for (const text of [BREAD, other]) {
      const promised = text.replace('gives 2 loaves', 'gives 2 loaves\nfree of nuts');
      const said = compiled(promised).diagnostics.filter(({ code }) => code === 'A01');
      expect(said.map((one) => sentence(one))).toEqual(['“free of nuts”, but walnuts may go in']);
      expect(labelled(promised).diagnostics.map((one) => sentence(one))).toContain(
        '“free of nuts”, but walnuts may go in',
      );
      expect(labelText(labelled(promised).value)).toMatch(/“free of nuts” is contradicted by walnuts \(may/);
      // The line that breaks it is shown.
      const [related] = said[0]?.related ?? [];
      expect(promised.slice(related?.place.start, related?.place.end)).toMatch(/walnuts/);
    }
    const vegan = judged(
      'keywords vegan',
      BREAD.replace('20 g butter', '20 g olive oil').replace('optional 30 g walnuts', 'optional 30 g butter'),
    );
    expect(vegan).toMatchObject({ verdict: 'contradicted', against: ['butter'] });
    expect(vegan.codes).toContain('A08');
  });

  test('that rest on an unknown food cannot be confirmed', () => {
    const { verdict, against, said } = judged('free of eggs', BREAD.replace('butter', 'frobnut paste'));
    expect(verdict).toBe('cannot confirm');
    expect(against).toEqual(['frobnut paste']);
    expect(said.join('\n')).toMatch(/cannot be confirmed, because of frobnut paste: it is not known/);
  });

  test('that nothing contradicts are not thereby confirmed', () => {
    const text = BREAD.replace('gives 2 loaves', 'gives 2 loaves\nfree of fish');
    const { value } = labelled(text);
    expect(value.promises[0]?.verdict).toBe('not contradicted');
    expect(labelText(value)).toMatch(/which is no proof/);
  });

  test('about nuts are broken by peanuts too, as most readers take the word', () => {
    expect(judged('free of nuts', BREAD.replace('20 g butter', '20 g peanuts')).verdict).toBe('contradicted');
  });

  test('of lactose are held against milk', () => {
    expect(judged('keywords lactose-free')).toMatchObject({ verdict: 'contradicted', against: ['butter'] });
  });

  test('that nobody can check say so', () => {
    expect(judged('keywords worry-free').verdict).toBe('cannot confirm');
  });

  test('of vegan food are broken by butter, by honey and by egg', () => {
    for (const food of ['butter', 'honey', 'egg', 'minced beef']) {
      const found = judged('keywords bread, vegan', BREAD.replace('20 g butter', `20 g ${food}`));
      expect(found, food).toMatchObject({ verdict: 'contradicted', against: [food] });
      expect(found.codes).toContain('A08');
    }
  });

  test('of vegetarian food are broken by meat and fish, not by milk', () => {
    expect(judged('keywords vegetarian').verdict).not.toBe('contradicted');
    expect(judged('keywords vegetarian', BREAD.replace('20 g butter', '20 g lard')).verdict).toBe('contradicted');
    expect(judged('keywords vegetarian', BREAD.replace('20 g butter', '20 g anchovies')).verdict).toBe('contradicted');
  });

  test('of vegan food without anything against it', () => {
    const plain = BREAD.replace('20 g butter', '20 g olive oil').replace('optional 30 g walnuts', '30 g walnuts');
    expect(judged('keywords vegan', plain).verdict).toBe('not contradicted');
  });
});
