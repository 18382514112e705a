/**
 * Finds text for people that stands in sources instead of message files: in elements and their attributes, on canvases,
 * in what is handed to the browser to be said, in styles, in bundled levels, and sentences anywhere.
 */
import { isSentence, textOf as wholeText } from '../house/sentences.ts';
import { isNode, readModule, type SyntaxNode, walk } from '../house/syntax.ts';

/** Text that was found, and where. */
export interface Spoken {
  readonly line: number;
  readonly text: string;
}

/** Two letters in a row make a word; what is filled in is none. */
const hasWord = (text: string): boolean => /\p{L}{2}/u.test(text);

/** Attributes and properties that are shown or read aloud. */
const SAID_ATTRIBUTE =
  /^(title|alt|placeholder|label|summary|intro|hint|said|content|aria-(label|description|roledescription|valuetext|placeholder)|data-label)$/;
/** Properties of elements, and of what draws, that are shown. */
const SAID_PROPERTY =
  /^(title|textContent|innerText|alt|placeholder|ariaLabel|ariaDescription|download|text)$/;
/** What is called with a text that is shown, written on a canvas or spoken. */
const SAID_CALL =
  /^(text|fillText|strokeText|setText|addText|alert|confirm|prompt|append|prepend|createTextNode|SpeechSynthesisUtterance|Notification|Option)$/;

/** A code such as `first-hour`, for which the words stand elsewhere. */
const isCode = (value: unknown): boolean => typeof value === 'string' && /^[a-z0-9-]+$/.test(value);

const nameOf = (node: unknown): string => {
  if (!isNode(node)) return '';
  if (node.type === 'MemberExpression') return nameOf(node['property']);
  if (node.type === 'Literal') return typeof node['value'] === 'string' ? node['value'] : '';
  if (node.type === 'JSXNamespacedName') return '';
  return typeof node['name'] === 'string' ? node['name'] : '';
};

/** Texts that a value can be, by itself, by choice or by joining; what is called for one is not looked into. */
function textsOf(node: unknown): readonly SyntaxNode[] {
  if (!isNode(node)) return [];
  switch (node.type) {
    case 'Literal':
      return typeof node['value'] === 'string' && hasWord(node['value']) ? [node] : [];
    case 'TemplateLiteral': {
      const parts = node['quasis'] as readonly { value: { cooked: string } }[];
      return parts.some(({ value }) => hasWord(value.cooked)) ? [node] : [];
    }
    case 'ConditionalExpression':
      return [...textsOf(node['consequent']), ...textsOf(node['alternate'])];
    case 'LogicalExpression':
      return [...(node['operator'] === '&&' ? [] : textsOf(node['left'])), ...textsOf(node['right'])];
    case 'BinaryExpression':
      return node['operator'] === '+' ? [...textsOf(node['left']), ...textsOf(node['right'])] : [];
    case 'JSXExpressionContainer':
    case 'ParenthesizedExpression':
    case 'TSAsExpression':
      return textsOf(node['expression']);
    case 'ArrayExpression':
      return (node['elements'] as readonly unknown[]).flatMap(textsOf);
    default:
      return [];
  }
}

/** What a node hands to people. */
function saidAt(node: SyntaxNode, parent: SyntaxNode | null): readonly SyntaxNode[] {
  const isChild = parent?.type === 'JSXElement' || parent?.type === 'JSXFragment';
  switch (node.type) {
    case 'JSXText':
      return hasWord(String(node['value'])) ? [node] : [];
    case 'JSXExpressionContainer':
      return isChild ? textsOf(node) : [];
    case 'JSXAttribute':
      return SAID_ATTRIBUTE.test(nameOf(node['name'])) ? textsOf(node['value']) : [];
    case 'CallExpression':
    case 'NewExpression': {
      const args = node['arguments'] as readonly unknown[];
      const callee = nameOf(node['callee']);
      if (callee === 'setAttribute') return SAID_ATTRIBUTE.test(nameOf(args[0])) ? textsOf(args[1]) : [];
      if (callee === 'text' && isNode(node['callee']) && node['callee'].type !== 'MemberExpression')
        return [];
      return SAID_CALL.test(callee) ? args.flatMap(textsOf) : [];
    }
    case 'AssignmentExpression':
      return isNode(node['left']) &&
        node['left'].type === 'MemberExpression' &&
        SAID_PROPERTY.test(nameOf(node['left']))
        ? textsOf(node['right'])
        : [];
    case 'Property':
      return SAID_PROPERTY.test(nameOf(node['key'])) || SAID_ATTRIBUTE.test(nameOf(node['key']))
        ? textsOf(node['value']).filter((one) => !isCode(one['value']))
        : [];
    default:
      return [];
  }
}

/** What only developers read: errors that are thrown, and lines in the console. */
function isForDevelopers(node: SyntaxNode): boolean {
  if (node.type === 'ThrowStatement') return true;
  const callee = isNode(node['callee']) ? node['callee'] : null;
  if (node.type === 'NewExpression') return nameOf(callee).endsWith('Error');
  return (
    node.type === 'CallExpression' && isNode(callee?.['object']) && nameOf(callee['object']) === 'console'
  );
}

/** Several words that begin like a label, a number with a noun, or several words around something filled in. */
const phrase =
  /^(?:\p{Lu}[\p{L}’'-]*(?: [\p{L}’'-]+)+[:?!.…]?|.*… \p{L}{2,}.*|.*\p{L}{2,} \p{L}{2,}.*….*)$/su;

/** What is no text: classes, keys, and names by which elements are found. */
function isNoText(node: SyntaxNode): boolean {
  if (node.type === 'JSXAttribute')
    return /^(class|key|id|for|d|style|aria-(describedby|labelledby))$/.test(nameOf(node['name']));
  return (
    node.type === 'CallExpression' && /^(querySelector(All)?|closest|matches)$/.test(nameOf(node['callee']))
  );
}

/** Text for people in a source, each with its line. */
export function spokenInSource(path: string, text: string): readonly Spoken[] {
  const module = readModule(path, text);
  const silent: SyntaxNode[] = [];
  const places = new Map<number, number>();
  walk(module.program, (node, parent) => {
    if (isForDevelopers(node) || isNoText(node)) silent.push(node);
    const own = wholeText(node);
    const isText = own !== null && (phrase.test(own) || isSentence(own));
    for (const said of isText ? [node] : saidAt(node, parent)) places.set(said.start, said['end'] as number);
  });
  const isSilent = (start: number): boolean =>
    silent.some((node) => node.start <= start && start < (node['end'] as number));
  return [...places]
    .filter(([start]) => !isSilent(start))
    .map(([start, end]) => ({ line: module.lineOf(start), text: text.slice(start, end).trim() }));
}

/** Words that a style puts on the page. */
export function spokenInStyle(text: string): readonly Spoken[] {
  const bare = text.replace(/\/\*.*?\*\//gs, (comment) => comment.replace(/[^\n]/g, ' '));
  return [...bare.matchAll(/\bcontent:\s*([^;}]*)/g)].flatMap((match) => {
    const shown = [...(match[1] ?? '').matchAll(/"((?:[^"\\]|\\.)*)"|'((?:[^'\\]|\\.)*)'/g)]
      .map((one) => (one[1] ?? one[2] ?? '').replace(/\\[0-9a-f]+\s?/gi, ''))
      .filter(hasWord);
    return shown.map((one) => ({ line: bare.slice(0, match.index).split('\n').length, text: one }));
  });
}

/** Words of a bundled level that no message says: pages show the message in its place, by the id of the level. */
export function spokenInLevel(text: string, messages: ReadonlySet<string>): readonly Spoken[] {
  const found: Spoken[] = [];
  const look = (value: unknown): void => {
    if (typeof value === 'string' && hasWord(value) && /\s|^\p{Lu}/u.test(value) && !messages.has(value))
      found.push({
        line: text.slice(0, text.indexOf(JSON.stringify(value))).split('\n').length,
        text: value,
      });
    else if (typeof value === 'object' && value !== null) for (const part of Object.values(value)) look(part);
  };
  look(JSON.parse(text));
  return found;
}
