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

/** Two letters in a row make a word; what is filled in is none, nor is the ending of a file. */
const hasWord = (text: string): boolean => /\p{L}{2}/u.test(text.replace(/^(\.[a-z]+)+$/, ''));

/** Attributes and properties that are shown or read aloud. */
const SAID_ATTRIBUTE =
  /^(title|alt|placeholder|label|summary|intro|hint|said|content|aria-(label|description|roledescription|valuetext|placeholder)|data-label|dangerouslySetInnerHTML)$/;
/** Properties of elements, and of what draws, that are shown. */
const SAID_PROPERTY =
  /^(title|textContent|innerText|outerText|innerHTML|outerHTML|__html|nodeValue|alt|placeholder|label|ariaLabel|ariaDescription|ariaValueText|ariaRoleDescription|download|text)$/;
/** What is called with a text that is shown, written on a canvas or spoken. */
const SAID_CALL =
  /^(text|fillText|strokeText|setText|addText|alert|confirm|prompt|append|prepend|before|after|replaceWith|replaceChildren|createTextNode|setCustomValidity|SpeechSynthesisUtterance|Notification|Option|offerFile)$/;

/** A code such as `first-hour`, for which the words stand elsewhere. */
const isCode = (value: unknown): boolean => typeof value === 'string' && /^[a-z0-9-]+$/.test(value);

const nameOf = (node: unknown): string => {
  if (!isNode(node)) return '';
  if (node.type === 'MemberExpression') return nameOf(node['property']);
  if (node.type === 'Literal') return typeof node['value'] === 'string' ? node['value'] : '';
  if (node.type === 'JSXNamespacedName') return '';
  return typeof node['name'] === 'string' ? node['name'] : '';
};

/** What names of a source stand for: values of constants, and functions. */
type Known = ReadonlyMap<string, SyntaxNode>;
/** Names are followed no further than this; nobody writes longer ways by chance. */
const FURTHEST = 4;

const isFunction = ({ type }: SyntaxNode): boolean => /Function/.test(type);

/** Everything a function gives back, without what functions within it do. */
function givenBack(body: unknown): readonly unknown[] {
  if (Array.isArray(body)) return body.flatMap(givenBack);
  if (!isNode(body) || isFunction(body)) return [];
  if (body.type === 'ReturnStatement') return [body['argument']];
  return Object.values(body).flatMap((part) => (typeof part === 'object' ? givenBack(part) : []));
}

/**
 * Texts that a value can be: by itself, by choice, by joining, or by a name of the same source that stands for one or
 * for a function that gives one back. What comes from other sources is looked at there.
 */
function textsOf(node: unknown, known: Known, way = 0): readonly SyntaxNode[] {
  if (!isNode(node) || way > FURTHEST) return [];
  const of = (part: unknown): readonly SyntaxNode[] => textsOf(part, known, way);
  const named = (name: unknown): SyntaxNode | undefined =>
    isNode(name) && name.type === 'Identifier' ? known.get(nameOf(name)) : undefined;
  switch (node.type) {
    case 'Identifier':
      return textsOf(named(node), known, way + 1);
    case 'MemberExpression': {
      const list = named(node['object']);
      if (list?.type !== 'ObjectExpression' && list?.type !== 'ArrayExpression') return [];
      const parts = (list['properties'] ?? list['elements']) as readonly unknown[];
      return parts.flatMap((part) =>
        textsOf(isNode(part) && part.type === 'Property' ? part['value'] : part, known, way + 1),
      );
    }
    case 'CallExpression': {
      const called = named(node['callee']);
      if (called === undefined || !isFunction(called)) return [];
      const body = called['body'];
      const back = isNode(body) && body.type !== 'BlockStatement' ? [body] : givenBack(body);
      return back.flatMap((part) => textsOf(part, known, way + 1));
    }
    case 'Literal':
      return typeof node['value'] === 'string' && hasWord(node['value']) ? [node] : [];
    case 'TemplateLiteral': {
      const parts = node['quasis'] as readonly { value: { cooked: string } }[];
      return parts.some(({ value }) => hasWord(value.cooked)) ? [node] : [];
    }
    case 'ConditionalExpression':
      return [...of(node['consequent']), ...of(node['alternate'])];
    case 'LogicalExpression':
      return [...(node['operator'] === '&&' ? [] : of(node['left'])), ...of(node['right'])];
    case 'BinaryExpression':
      return node['operator'] === '+' ? [...of(node['left']), ...of(node['right'])] : [];
    case 'JSXExpressionContainer':
    case 'ParenthesizedExpression':
    case 'TSAsExpression':
    case 'TSSatisfiesExpression':
    case 'TSNonNullExpression':
      return of(node['expression']);
    case 'ArrayExpression':
      return (node['elements'] as readonly unknown[]).flatMap(of);
    default:
      return [];
  }
}

/** What a node hands to people. */
function saidAt(node: SyntaxNode, parent: SyntaxNode | null, known: Known): readonly SyntaxNode[] {
  const of = (part: unknown): readonly SyntaxNode[] => textsOf(part, known);
  const isChild = parent?.type === 'JSXElement' || parent?.type === 'JSXFragment';
  switch (node.type) {
    case 'JSXText':
      return hasWord(String(node['value'])) ? [node] : [];
    case 'JSXExpressionContainer':
      return isChild ? of(node) : [];
    case 'JSXAttribute':
      return SAID_ATTRIBUTE.test(nameOf(node['name'])) ? of(node['value']) : [];
    case 'CallExpression':
    case 'NewExpression': {
      const args = node['arguments'] as readonly unknown[];
      const callee = nameOf(node['callee']);
      if (callee === 'setAttribute') return SAID_ATTRIBUTE.test(nameOf(args[0])) ? of(args[1]) : [];
      if (callee === 'text' && isNode(node['callee']) && node['callee'].type !== 'MemberExpression')
        return [];
      // The first says where it goes.
      if (callee.startsWith('insertAdjacent')) return args.slice(1).flatMap(of);
      return SAID_CALL.test(callee) ? args.flatMap(of) : [];
    }
    case 'AssignmentExpression':
      return isNode(node['left']) &&
        node['left'].type === 'MemberExpression' &&
        SAID_PROPERTY.test(nameOf(node['left']))
        ? of(node['right'])
        : [];
    case 'Property':
      return SAID_PROPERTY.test(nameOf(node['key'])) || SAID_ATTRIBUTE.test(nameOf(node['key']))
        ? of(node['value']).filter((one) => !isCode(one['value']))
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
  const known = new Map<string, SyntaxNode>();
  walk(module.program, (node) => {
    const { type, id } = node;
    let value = type === 'VariableDeclarator' ? node['init'] : type === 'FunctionDeclaration' ? node : null;
    while (isNode(value) && /^TS(As|Satisfies)Expression$/.test(value.type)) value = value['expression'];
    if (isNode(id) && isNode(value)) known.set(nameOf(id), value);
  });
  walk(module.program, (node, parent) => {
    if (isForDevelopers(node) || isNoText(node)) silent.push(node);
    const own = wholeText(node);
    const isText = own !== null && (phrase.test(own) || isSentence(own));
    for (const said of isText ? [node] : saidAt(node, parent, known))
      places.set(said.start, said['end'] as number);
  });
  const isSilent = (start: number): boolean =>
    silent.some((node) => node.start <= start && start < (node['end'] as number));
  return [...places]
    .filter(([start]) => !isSilent(start))
    .map(([start, end]) => ({ line: module.lineOf(start), text: text.slice(start, end).trim() }));
}

/** Declarations of a style by which words come to the page; a property of its own may be put into one of them. */
const SAID_DECLARATION =
  /(?:(?<![\w-])(?:content|list-style|list-style-type|quotes|text-overflow|prefix|suffix|symbols|string-set)|--[\w-]+):\s*((?:"[^"]*"|'[^']*'|[^;}"'])*)/g;
/** Names of fonts are no words for people. */
const isFont = (declaration: string): boolean => /^--font\b/.test(declaration);

/** Words that a style puts on the page. */
export function spokenInStyle(text: string): readonly Spoken[] {
  const bare = text.replace(/\/\*.*?\*\//gs, (comment) => comment.replace(/[^\n]/g, ' '));
  const drawn = [
    ...bare.matchAll(/(?:>|%3E)([^<>%]*\p{L}{2}[^<>%]*)(?:<|%3C)\/(?:text|tspan|title|desc)/gu),
  ].map((match) => ({ line: bare.slice(0, match.index).split('\n').length, text: (match[1] ?? '').trim() }));
  const said = [...bare.matchAll(SAID_DECLARATION)].flatMap((match) => {
    if (isFont(match[0])) return [];
    const shown = [
      ...(match[1] ?? '')
        .replace(/url\((?:"[^"]*"|'[^']*'|[^)]*)\)/g, '')
        .matchAll(/"((?:[^"\\]|\\.)*)"|'((?:[^'\\]|\\.)*)'/g),
    ]
      .map((one) => (one[1] ?? one[2] ?? '').replace(/\\[0-9a-f]+\s?/gi, ''))
      .filter(hasWord);
    return shown.map((one) => ({ line: bare.slice(0, match.index).split('\n').length, text: one }));
  });
  return [...said, ...drawn];
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
