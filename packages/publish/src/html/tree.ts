import { htmlAttribute, htmlText, isolateDirections } from '../escape.js';

/*
 * A page is built as a tree and written out in one place, so that no text reaches a page unescaped by accident. The
 * tree has the shape of hast, the tree of the unified ecosystem, and its property names: a Markdown pipeline takes it
 * as it is.
 */

export interface TextNode {
  readonly type: 'text';
  readonly value: string;
}

/** Names and values as in hast: `className`, `htmlFor`, `ariaLabel`, `dataQuern`. `false` and `undefined` are not written. */
export type Properties = Readonly<Record<string, string | number | boolean | readonly string[] | undefined>>;

export interface ElementNode {
  readonly type: 'element';
  readonly tagName: string;
  readonly properties: Properties;
  readonly children: readonly HtmlNode[];
}

export type HtmlNode = TextNode | ElementNode;

/** What may stand between tags when a tree is built; `undefined` and `false` are left out. */
export type Child = HtmlNode | string | undefined | false | readonly Child[];

/** An element. Strings among the children are text. */
export function element(tagName: string, properties: Properties, ...children: readonly Child[]): ElementNode {
  const kept = Object.entries(properties)
    .filter(([, value]) => value !== undefined && value !== false)
    .map(([name, value]) => [name, typeof value === 'string' ? isolateDirections(value) : value] as const);
  return { type: 'element', tagName, properties: Object.fromEntries(kept), children: children.flatMap(nodes) };
}

function nodes(child: Child): HtmlNode[] {
  if (child === undefined || child === false || child === '') return [];
  if (typeof child === 'string') return [{ type: 'text', value: isolateDirections(child) }];
  return isList(child) ? child.flatMap(nodes) : [child];
}

const isList = (child: HtmlNode | readonly Child[]): child is readonly Child[] => Array.isArray(child);

/** Elements without an end tag (HTML Standard, 13.1.2). */
const VOID = new Set(['br', 'hr', 'img', 'input', 'link', 'meta']);

/** Elements whose text is not markup; their content must come from `jsonInScript` or be our own. */
const RAW = new Set(['script', 'style']);

const ATTRIBUTES: Readonly<Record<string, string>> = { className: 'class', htmlFor: 'for', httpEquiv: 'http-equiv' };

/** The attribute that a property of hast is written as. */
function attributeName(property: string): string {
  const known = ATTRIBUTES[property];
  if (known !== undefined) return known;
  if (/^data[A-Z]/.test(property)) return property.replace(/[A-Z]/g, (capital) => '-' + capital.toLowerCase());
  if (/^aria[A-Z]/.test(property)) return 'aria-' + property.slice(4).toLowerCase();
  return property.toLowerCase();
}

/** The tree as HTML. */
export function toHtml(node: HtmlNode): string {
  if (node.type === 'text') return htmlText(node.value);
  const attributes = Object.entries(node.properties).map(([name, value]) => attribute(attributeName(name), value));
  const open = `<${node.tagName}${attributes.join('')}>`;
  if (VOID.has(node.tagName)) return open;
  const raw = RAW.has(node.tagName);
  const inside = node.children.map((child) => (raw && child.type === 'text' ? child.value : toHtml(child)));
  return `${open}${inside.join('')}</${node.tagName}>`;
}

function attribute(name: string, value: Properties[string]): string {
  if (value === undefined || value === false) return '';
  if (value === true) return ` ${name}`;
  const text = typeof value === 'object' ? value.join(' ') : String(value);
  return ` ${name}="${htmlAttribute(text)}"`;
}
