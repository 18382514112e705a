/**
 * Finds sentences for people among the texts of a source: the core knows codes and numbers, the words stand elsewhere.
 * Titles of roads and plans, with the line that a road has under its title, are what the things are called and may be
 * anywhere, like the files in `levels`.
 */
import { isNode, type Module, type SyntaxNode, walk } from './syntax.ts';

/** Begins like a sentence (or with something that is filled in), has several words, and ends like one. */
const sentence = /^["“…]?(?:[A-Z0-9]|…).*[a-z]{2,} .*[.!?…]["”]?$/s;
const mark = /[.!?]/;

/** Whether a text reads like a sentence. */
export const isSentence = (text: string): boolean => mark.test(text) && sentence.test(text.trim());

/** The whole text of a literal, with … for what is filled in. */
export function textOf(node: SyntaxNode): string | null {
  if (node.type === 'Literal') return typeof node['value'] === 'string' ? node['value'] : null;
  if (node.type !== 'TemplateLiteral') return null;
  const parts = node['quasis'] as { value: { cooked: string } }[];
  return parts.map(({ value }) => value.cooked).join('…');
}

/** Whether a property is the title of something, or the line under one. */
function isTitle(property: SyntaxNode, parent: SyntaxNode | null): boolean {
  const nameOf = (node: unknown): unknown =>
    isNode(node) && isNode(node['key']) ? node['key']['name'] : null;
  if (nameOf(property) === 'title') return true;
  const beside = parent === null ? [] : ((parent['properties'] ?? []) as unknown[]);
  return nameOf(property) === 'sentence' && beside.some((other) => nameOf(other) === 'title');
}

/** Sentences of a file, each with its line. */
export function findSentences(module: Module): { readonly line: number; readonly text: string }[] {
  const found: { line: number; text: string }[] = [];
  const titles = new Set<unknown>();
  walk(module.program, (node, parent) => {
    if (node.type === 'Property' && isTitle(node, parent)) titles.add(node['value']);
    if (titles.has(node)) return;
    const text = textOf(node);
    if (text !== null && isSentence(text)) found.push({ line: module.lineOf(node.start), text });
  });
  return found;
}
