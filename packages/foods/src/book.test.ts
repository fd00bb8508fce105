import type { FoodAnswer } from '@quern/compiler';
import { describe, expect, test } from 'vitest';
import { createFoodBook, openFoodBook } from './index.js';

const book = createFoodBook();

const found = (name: string) => {
  const answer = book.find(name);
  if (answer.kind !== 'found') throw new Error(`“${name}” was not found but ${answer.kind}`);
  return answer.match;
};

const ids = (answer: FoodAnswer) => (answer.kind === 'ambiguous' ? answer.candidates.map((food) => food.id) : []);

describe('a name is found', () => {
  test('as the preferred name, in any case, with or without “the”, singular or plural', () => {
    for (const name of ['whole rye flour', 'Whole Rye Flour', 'the whole rye flour']) {
      expect(found(name)).toMatchObject({ how: 'name', food: { id: 'whole-rye-flour' } });
    }
    expect(found('white cabbages').food.id).toBe('white-cabbage');
    expect(found('tomatoes').food.id).toBe('tomato');
  });

  test('as a synonym, British or American', () => {
    expect(found('eggplant')).toMatchObject({ how: 'synonym', food: { id: 'aubergine' } });
    expect(found('zucchini').food).toBe(found('courgettes').food);
    expect(found('baking soda').food).toBe(found('bicarbonate of soda').food);
    expect(found("confectioners' sugar").food.id).toBe('icing-sugar');
  });

  test('behind known qualifiers, which are reported', () => {
    expect(found('large eggs')).toMatchObject({ how: 'head', size: 'large', form: '', food: { id: 'egg' } });
    expect(found('finely chopped onions')).toMatchObject({ how: 'head', form: 'chopped', food: { id: 'onion' } });
    expect(found('medium ripe bananas')).toMatchObject({ size: 'medium', food: { id: 'banana' } });
    expect(found('cold unsalted butter')).toMatchObject({ form: '', food: { id: 'unsalted-butter' } });
    expect(found('melted butter')).toMatchObject({ form: 'melted', food: { id: 'butter' } });
    expect(found('butter melted')).toMatchObject({ form: 'melted', food: { id: 'butter' } });
    expect(found('organic toasted sunflower seeds')).toMatchObject({
      form: 'toasted',
      food: { id: 'sunflower-seeds' },
    });
    expect(found('frozen raspberries').food.id).toBe('frozen-raspberries');
    expect(found('frozen cherries')).toMatchObject({ how: 'head', food: { id: 'cherry' } });
  });

  test('whatever it is for, and by the fruit', () => {
    expect(found('butter for greasing').food.id).toBe('butter');
    expect(found('plain flour for dusting').food.id).toBe('plain-flour');
    expect(found('juice of a lemon')).toMatchObject({ piece: 'fruit', food: { id: 'lemon-juice' } });
    expect(found('finely grated zest of 1 orange').food.id).toBe('orange-zest');
    expect(found('70% dark chocolate').food.id).toBe('dark-chocolate');
  });

  test('with the part that it counts', () => {
    expect(found('garlic cloves')).toMatchObject({ piece: 'clove', food: { id: 'garlic' } });
    expect(found('thyme sprigs')).toMatchObject({ piece: 'sprig', food: { id: 'thyme' } });
    expect(found('sprigs of thyme')).toMatchObject({ piece: 'sprig', food: { id: 'thyme' } });
    expect(found('fresh basil leaves')).toMatchObject({ piece: 'leaf', food: { id: 'basil' } });
    expect(found('carrots').piece).toBeUndefined();
  });

  test('and a longer name of the table wins over its head', () => {
    expect(found('ground almonds').food.id).toBe('ground-almonds');
    expect(found('ground ginger').food.id).toBe('ground-ginger');
    expect(found('dried thyme').food.id).toBe('dried-thyme');
    expect(found('whole milk').food.id).toBe('whole-milk');
    expect(found('skimmed milk').food.id).toBe('skimmed-milk');
    expect(found('salted butter').food.id).not.toBe(found('unsalted butter').food.id);
  });
});

describe('a name is never guessed', () => {
  test('when it means several foods', () => {
    expect(ids(book.find('flour'))).toEqual([
      'plain-flour',
      'strong-wheat-flour',
      'self-raising-flour',
      'wholemeal-flour',
    ]);
    expect(ids(book.find('pepper'))).toContain('black-pepper');
    expect(ids(book.find('pepper'))).toContain('red-pepper');
    expect(ids(book.find('chopped coriander'))).toEqual(['coriander-leaves', 'coriander-seed']);
    expect(ids(book.find('tomato purée'))).toEqual(['tomato-paste', 'passata']);
  });

  test('when a word beside it is not known', () => {
    expect(book.find('heritage carrots')).toMatchObject({ kind: 'unknown', near: ['carrot'], accents: false });
    expect(book.find('smoked butter')).toMatchObject({ kind: 'unknown', near: ['butter'] });
    expect(book.find('cooked rice')).toMatchObject({ kind: 'unknown' });
    expect(book.find('juice of half a lemon')).toMatchObject({ kind: 'unknown' });
  });

  test('when a qualifier does not suit the food', () => {
    expect(book.find('frozen butter').kind).toBe('unknown');
    expect(book.find('unsalted soy sauce').kind).toBe('unknown');
  });

  test('when a letter is wrong: near names are offered', () => {
    expect(book.find('suger')).toMatchObject({ kind: 'unknown', near: ['sugar'] });
    expect(book.find('ozzmoquat')).toEqual({ kind: 'unknown', near: [], accents: false });
  });

  test('when only its accents differ: the right spelling is offered', () => {
    expect(book.find('creme fraiche')).toEqual({ kind: 'unknown', near: ['crème fraîche'], accents: true });
    expect(book.find('gruyere')).toEqual({ kind: 'unknown', near: ['Gruyère'], accents: true });
    expect(book.find('jalapeno')).toMatchObject({ near: ['jalapeño'], accents: true });
  });

  test('nor is nonsense', () => {
    for (const name of ['', ' ', 'the', 'fresh', 'chopped', 'of', '🍋', '🦄', 'large', 'x'.repeat(10_000)]) {
      expect(book.find(name).kind, `“${name.slice(0, 20)}”`).toBe('unknown');
    }
  });
});

describe('classes', () => {
  test('hold the foods that carry them', () => {
    const nuts = book.ofClass('nut').map((food) => food.id);
    expect(nuts).toContain('walnuts');
    expect(nuts).toContain('peanuts');
    expect(nuts).not.toContain('sunflower-seeds');
    expect(book.ofClass('citrus fruits').map((food) => food.id)).toContain('lemon');
  });

  test('that nobody named are empty', () => {
    expect(book.ofClass('unicorn')).toEqual([]);
    expect(book.ofClass('')).toEqual([]);
  });
});

describe('the book', () => {
  test('gives a food by its identifier, always the same one', () => {
    expect(book.get('egg')).toBe(found('eggs').food);
    expect(book.get('no-such-food')).toBeUndefined();
  });

  test('names its edition by its text alone', () => {
    expect(book.version).toBe(createFoodBook().version);
    expect(openFoodBook('quern food table 1\n').version).not.toBe(book.version);
    expect(book.version).toMatch(/^[0-9a-f]{16}$/);
  });

  test('opens a table given as text', () => {
    const text = [
      'quern food table 1',
      'N\tenergyKcal protein water',
      'S\tmine\tmy own scales',
      'F\tmoon cheese\tlunar cheese\tdairy\tcheese\tmilk\tanimal\t90\t300 - 40\t- 100 mine\t-/- 20 mine\tmine',
    ].join('\n');
    const own = openFoodBook(text);
    const answer = own.find('lunar cheese');
    expect(answer).toMatchObject({
      kind: 'found',
      match: { how: 'synonym', food: { id: 'moon-cheese', allergens: ['milk'] } },
    });
    expect(Object.keys(own.get('moon-cheese')?.nutrients ?? {})).toEqual(['energyKcal', 'water']);
    expect(own.source('mine')).toBe('my own scales');
  });

  test('refuses a text that is no table', () => {
    expect(() => openFoodBook('{"foods": []}')).toThrow('not a food table');
  });
});
