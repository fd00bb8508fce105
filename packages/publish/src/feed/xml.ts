import { xmlAttribute, xmlText } from '../escape.js';

/** An XML element; strings among the children are text. */
export interface XmlElement {
  readonly name: string;
  readonly attributes: Readonly<Record<string, string>>;
  readonly children: readonly (XmlElement | string)[];
}

export function xml(
  name: string,
  attributes: Readonly<Record<string, string>>,
  ...children: readonly (XmlElement | string | undefined)[]
): XmlElement {
  return { name, attributes, children: children.filter((child) => child !== undefined) };
}

/** The document with its declaration. */
export function xmlDocument(root: XmlElement): string {
  return `<?xml version="1.0" encoding="utf-8"?>\n${write(root)}\n`;
}

function write(node: XmlElement | string): string {
  if (typeof node === 'string') return xmlText(node);
  const attributes = Object.entries(node.attributes).map(([name, value]) => ` ${name}="${xmlAttribute(value)}"`);
  const open = `<${node.name}${attributes.join('')}`;
  if (node.children.length === 0) return `${open}/>`;
  return `${open}>${node.children.map(write).join('')}</${node.name}>`;
}
