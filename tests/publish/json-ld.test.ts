import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import jsonld from 'jsonld';
import ts from 'typescript';
import { describe, expect, test } from 'vitest';
import { parseIsoDuration, rational } from '@quern/quantity';
import { cardJsonLd, cardHtml } from '@quern/publish';
import { hostileCard, HOSTILE, plainCordial, tinLoaf } from './cards.js';

/*
 * Checked from outside twice: a JSON-LD processor reads the data as triples, and every type, property and property of
 * a type is looked up in the vocabulary of schema.org as the package schema-dts publishes it.
 */

const CONTEXT = {
  '@context': {
    '@vocab': 'https://schema.org/',
    suitableForDiet: { '@type': '@id' },
    url: { '@type': '@id' },
    contentUrl: { '@type': '@id' },
    image: { '@type': '@id' },
    itemListElement: { '@container': '@list' },
    recipeInstructions: { '@container': '@list' },
  },
};

/** The context is given by hand: the tests ask no other machine. */
const documentLoader = async (
  url: string,
): Promise<{ contextUrl: undefined; documentUrl: string; document: object }> => {
  if (url !== 'https://schema.org') throw new Error(`unexpected request for ${url}`);
  return { contextUrl: undefined, documentUrl: url, document: CONTEXT };
};

/** The processor in its strict mode, where a term that the context does not know is an error and not a loss. */
const processor = {
  options: { documentLoader, safe: true },
  expand: (data: object): Promise<Thing[]> =>
    jsonld.expand(data as never, processor.options as never) as unknown as Promise<Thing[]>,
  toRDF: (data: object): Promise<{ predicate: { value: string } }[]> =>
    jsonld.toRDF(data as never, processor.options as never) as unknown as Promise<{ predicate: { value: string } }[]>,
};

/** Properties of each type with those it inherits, and the types of the vocabulary, read from the declarations of schema-dts. */
function vocabulary(): { properties: (type: string) => ReadonlySet<string>; diets: ReadonlySet<string> } {
  const path = createRequire(import.meta.url)
    .resolve('schema-dts')
    .replace(/schema\.(js|mjs)$/, 'schema.d.ts');
  const source = ts.createSourceFile(path, readFileSync(path, 'utf8'), ts.ScriptTarget.ES2022);
  const own = new Map<string, { names: string[]; parents: string[] }>();
  const diets = new Set<string>();
  source.forEachChild((node) => {
    if (ts.isInterfaceDeclaration(node)) {
      const names = node.members.flatMap((member) =>
        member.name ? [member.name.getText(source).replace(/"/g, '')] : [],
      );
      const parents = (node.heritageClauses ?? []).flatMap((clause) =>
        clause.types.flatMap((parent) => [
          parent.expression.getText(source),
          ...(parent.typeArguments ?? []).map((a) => a.getText(source)),
        ]),
      );
      own.set(node.name.text, { names, parents });
    } else if (ts.isTypeAliasDeclaration(node) && node.name.text === 'RestrictedDiet') {
      for (const [, diet] of node.type.getText(source).matchAll(/"(https:\/\/schema\.org\/\w+)"/g))
        diets.add(diet ?? '');
    }
  });
  const all = (name: string): string[] => {
    const entry = own.get(name);
    return entry ? [...entry.names, ...entry.parents.flatMap(all)] : [];
  };
  return { properties: (type) => new Set([...all(`${type}Base`), ...all(`${type}Leaf`)]), diets };
}

const schema = vocabulary();

type Thing = Record<string, unknown>;

/** Every typed object in the data. */
function things(value: unknown): Thing[] {
  if (Array.isArray(value)) return value.flatMap(things);
  if (typeof value !== 'object' || value === null) return [];
  const inside = Object.values(value).flatMap(things);
  return '@type' in value ? [value as Thing, ...inside] : inside;
}

describe('the vocabulary as it was read', () => {
  test('knows what a recipe is and what it is not', () => {
    expect(schema.properties('Recipe')).toContain('recipeIngredient');
    expect(schema.properties('Recipe')).toContain('name');
    expect(schema.properties('Recipe')).not.toContain('sunflower');
    expect(schema.properties('Thing')).not.toContain('recipeIngredient');
    expect(schema.diets).toContain('https://schema.org/VeganDiet');
  });
});

describe.each([
  ['the loaf', cardJsonLd(tinLoaf, { address: 'https://quay.example/loaf.html' })],
  ['the cordial', cardJsonLd(plainCordial)],
])('%s', (_, data) => {
  test('uses only types and properties of schema.org', () => {
    for (const thing of things(data)) {
      const known = schema.properties(String(thing['@type']));
      expect(known.size, String(thing['@type'])).toBeGreaterThan(5);
      for (const name of Object.keys(thing))
        if (!name.startsWith('@')) expect(known, String(thing['@type'])).toContain(name);
    }
  });

  test('loses nothing in a JSON-LD processor', async () => {
    const [expanded] = await processor.expand(data);
    expect(expanded?.['@type']).toEqual(['https://schema.org/Recipe']);
    const names = Object.keys(data).filter((name) => !name.startsWith('@'));
    for (const name of names) expect(expanded).toHaveProperty([`https://schema.org/${name}`]);
    const quads = await processor.toRDF(data);
    expect(quads.length).toBeGreaterThan(names.length);
    for (const { predicate } of quads)
      expect(predicate.value).toMatch(/^https:\/\/schema\.org\/|^http:\/\/www\.w3\.org\/1999\/02\/22-rdf-syntax-ns#/);
  });
});

describe('what is said', () => {
  const data = cardJsonLd(tinLoaf) as Record<string, unknown>;

  test('times are ISO 8601 and the longest of a range', () => {
    expect(data['prepTime']).toBe('PT26M');
    expect(parseIsoDuration(String(data['totalTime']))).toEqual(rational(4584));
    // Two oven lines, 15 and 45 min.
    expect(parseIsoDuration(String(data['cookTime']))).toEqual(rational(60));
  });

  test('makes are sections, steps are sentences as written', () => {
    const sections = data['recipeInstructions'] as {
      '@type': string;
      name: string;
      itemListElement: { '@type': string; text: string }[];
    }[];
    expect(sections.map((section) => [section['@type'], section.name])).toEqual(
      tinLoaf.makes.map((make) => ['HowToSection', make.name]),
    );
    expect(sections[3]?.itemListElement[0]).toMatchObject({
      '@type': 'HowToStep',
      text: 'Scrape into the 2 oiled tins, 1167 g each, and smooth the tops with a wet hand.',
    });
    const cordial = cardJsonLd(plainCordial)['recipeInstructions'];
    expect(cordial).toMatchObject([{ '@type': 'HowToStep', text: 'Simmer and strain.' }]);
  });

  test('what the recipe makes itself is no ingredient to buy', () => {
    const ingredients = data['recipeIngredient'] as string[];
    expect(ingredients).toContain('210 g (1 1/2 cups) sunflower seeds, toasted, or 195 g (1 1/2 cups) pumpkin seeds');
    expect(ingredients.join()).not.toMatch(/\bsoaker\b|\bdough\b/);
  });

  test('a figure that may be low is not given as the whole', () => {
    expect(data['nutrition']).toMatchObject({ calories: '110 kcal', servingSize: 'slice of 52 g' });
    expect(data['nutrition']).not.toHaveProperty('saturatedFatContent');
  });

  test('a diet is stated only if the label has confirmed it', () => {
    expect(data['suitableForDiet']).toEqual(['https://schema.org/VeganDiet', 'https://schema.org/VegetarianDiet']);
    expect(cardJsonLd(plainCordial)).not.toHaveProperty('suitableForDiet');
  });
});

test.each(HOSTILE)('hostile texts stay texts: %j', async (evil) => {
  const html = cardHtml(hostileCard(evil));
  const json = /<script type="application\/ld\+json">(.*?)<\/script>/s.exec(html)?.[1] ?? '';
  const data = JSON.parse(json) as Thing;
  const types = (list: readonly Thing[]): unknown[] =>
    list.map((thing) => thing['@type']).filter((type) => type !== 'ImageObject');
  expect(types(things(data))).toEqual(types(things(cardJsonLd(tinLoaf))));
  const expanded = await processor.expand({ ...data, url: 'https://quay.example/' });
  expect(expanded).toHaveLength(1);
});
