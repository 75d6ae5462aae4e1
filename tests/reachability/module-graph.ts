// Which declarations of a set of modules something reaches from given roots. In: TypeScript files and the roots among
// them. Out: what nothing reaches, and what is exported without a reader. A declaration is reached when a reached one,
// or a statement that runs as its module loads, names it; types count like values. Names that a function takes for
// its own use count as naming the module's: the search may miss a dead declaration and never accuses a living one.
import { existsSync, readFileSync } from 'node:fs';
import { dirname, resolve } from 'node:path';
import { parseSync } from 'vite';

interface Node {
  readonly type: string;
  readonly [key: string]: unknown;
}

interface Binding {
  readonly from: string;
  /** exported name there; '*' for all of it */
  readonly name: string;
}

export interface Module {
  readonly path: string;
  /** what each top-level declaration names */
  readonly declared: ReadonlyMap<string, ReadonlySet<string>>;
  /** of these, interfaces and types */
  readonly types: ReadonlySet<string>;
  /** exported name → declared or imported name */
  readonly exported: ReadonlyMap<string, string>;
  readonly imported: ReadonlyMap<string, Binding>;
  /** exports handed on from other modules: exported name → binding */
  readonly handedOn: ReadonlyMap<string, Binding>;
  /** modules that run when this one does, and those it starts or loads later */
  readonly loads: readonly string[];
  /** modules of which it is not known what is read: every export whose name stands in this text is */
  readonly opened: readonly string[];
  /** what statements that run as the module loads name */
  readonly run: ReadonlySet<string>;
  /** every name and property in the text */
  readonly words: ReadonlySet<string>;
}

/** A module from its text; imports of packages and of files that are no modules are left out. */
export function moduleOf(path: string, text: string = readFileSync(path, 'utf8')): Module {
  const { program, errors } = parseSync(path, text);
  if (errors.length > 0) throw new Error(`${path}: ${errors[0]?.message}`);
  const declared = new Map<string, Set<string>>();
  const types = new Set<string>();
  const exported = new Map<string, string>();
  const imported = new Map<string, Binding>();
  const handedOn = new Map<string, Binding>();
  const loads: string[] = [];
  const opened: string[] = [];
  const run = new Set<string>();
  const words = new Set<string>();

  function declare(node: Node): string[] {
    if (node.type === 'VariableDeclaration') {
      return (node.declarations as Node[]).flatMap((each) => {
        const names = [...namesIn({ ...(each.id as Node), typeAnnotation: null })];
        for (const name of names) declared.set(name, namesIn(each));
        return names;
      });
    }
    const name = (node.id as Node | null)?.name as string | undefined;
    if (name === undefined) return [];
    if (/^TS(Interface|TypeAlias)/.test(node.type)) types.add(name);
    declared.set(name, new Set([...(declared.get(name) ?? []), ...namesIn(node)]));
    return [name];
  }

  for (const node of program.body as unknown as Node[]) {
    const target = targetOf(path, (node.source as Node | null)?.value as string | undefined);
    if (node.type === 'ImportDeclaration') {
      if (target === null) continue;
      if (node.importKind !== 'type') loads.push(target);
      for (const each of node.specifiers as Node[]) {
        const name = importedName(each);
        imported.set((each.local as Node).name as string, { from: target, name });
        if (name === '*') opened.push(target);
      }
    } else if (node.type === 'ExportNamedDeclaration') {
      if (target !== null) {
        loads.push(target);
        for (const each of node.specifiers as Node[])
          handedOn.set(nameOf(each.exported), { from: target, name: nameOf(each.local) });
      } else if (node.declaration) {
        for (const name of declare(node.declaration as Node)) exported.set(name, name);
      } else {
        for (const each of node.specifiers as Node[]) exported.set(nameOf(each.exported), nameOf(each.local));
      }
    } else if (node.type === 'ExportDefaultDeclaration') {
      exported.set('default', 'default');
      declared.set('default', namesIn(node));
    } else if (/Declaration$/.test(node.type)) {
      declare(node);
    } else {
      for (const name of namesIn(node)) run.add(name);
    }
  }
  walk(program as unknown as Node, (node) => {
    if (node.type === 'Identifier' || node.type === 'JSXIdentifier') words.add(node.name as string);
    const later = laterSource(node);
    const target = targetOf(path, later ?? undefined);
    if (target === null) return;
    loads.push(target);
    opened.push(target);
  });
  return { path, declared, types, exported, imported, handedOn, loads, opened, run, words };
}

/** What is reached from the roots, all of whose exports and statements are: path → names of declarations. */
export function reachedFrom(
  modules: ReadonlyMap<string, Module>,
  roots: readonly string[],
): ReadonlyMap<string, ReadonlySet<string>> {
  const reached = new Map<string, Set<string>>();
  const loaded = new Set<string>();
  const waiting: (() => void)[] = [];

  function load(path: string): void {
    const module = modules.get(path);
    if (module === undefined || loaded.has(path)) return;
    loaded.add(path);
    for (const name of module.run) reach(module, name);
    for (const next of module.loads) waiting.push(() => load(next));
    for (const next of module.opened) waiting.push(() => open(next, module.words));
  }
  function open(path: string, words: ReadonlySet<string>): void {
    const module = modules.get(path);
    for (const name of [...(module?.exported.keys() ?? []), ...(module?.handedOn.keys() ?? [])])
      if (words.has(name) || name === 'default') reachExport(path, name);
  }
  function reachExport(path: string, name: string): void {
    const module = modules.get(path);
    if (module === undefined) return;
    const binding = module.handedOn.get(name);
    if (binding) reachExport(binding.from, binding.name);
    const local = module.exported.get(name);
    if (local !== undefined) reach(module, local);
  }
  function reach(module: Module, name: string): void {
    const names = reached.get(module.path) ?? new Set();
    reached.set(module.path, names);
    if (names.has(name)) return;
    names.add(name);
    const binding = module.imported.get(name);
    if (binding) waiting.push(() => reachExport(binding.from, binding.name));
    for (const next of module.declared.get(name) ?? []) waiting.push(() => reach(module, next));
  }

  for (const root of roots) {
    const module = modules.get(root);
    if (module === undefined) throw new Error(`no such root: ${root}`);
    load(root);
    for (const name of [...module.exported.keys(), ...module.handedOn.keys()]) reachExport(root, name);
  }
  for (let next = waiting.pop(); next; next = waiting.pop()) next();
  return reached;
}

/** Whether another export of the module has it in its signature, so that who reads one can name the other. */
export function isInSignature({ declared, exported }: Module, name: string): boolean {
  return [...exported.values()].some((other) => other !== name && declared.get(other)?.has(name));
}

/** Exports that a module other than their own imports: "path name". */
export function importedExports(modules: Iterable<Module>): ReadonlySet<string> {
  const all = [...modules];
  const byPath = new Map(all.map((module) => [module.path, module]));
  const names = new Set<string>();
  for (const { imported, handedOn, opened, words } of all) {
    for (const { from, name } of [...imported.values(), ...handedOn.values()]) names.add(`${from} ${name}`);
    for (const from of opened)
      for (const name of byPath.get(from)?.exported.keys() ?? [])
        if (words.has(name) || name === 'default') names.add(`${from} ${name}`);
  }
  return names;
}

function importedName(specifier: Node): string {
  if (specifier.type === 'ImportNamespaceSpecifier') return '*';
  return specifier.type === 'ImportDefaultSpecifier' ? 'default' : nameOf(specifier.imported);
}

function nameOf(node: unknown): string {
  return ((node as Node).name ?? (node as Node).value) as string;
}

/** The module an import means, null for a package or a file that is no module. */
function targetOf(path: string, source: string | undefined): string | null {
  if (!source?.startsWith('.')) return null;
  const target = resolve(dirname(path), source.replace(/\?.*$/, ''));
  return /\.tsx?$/.test(target) && existsSync(target) ? target : null;
}

/** import('…'), typeof import('…'), new URL('…', import.meta.url): a module that is opened later, or elsewhere. */
function laterSource(node: Node): string | null {
  const literal = (value: unknown): string | null =>
    (value as Node | undefined)?.type === 'Literal' ? String((value as Node).value) : null;
  if (node.type === 'ImportExpression' || node.type === 'TSImportType') return literal(node.source);
  const isUrl = node.type === 'NewExpression' && (node.callee as Node).name === 'URL';
  return isUrl ? literal((node.arguments as unknown[])[0]) : null;
}

/** Names a piece of code uses: identifiers, without keys of objects and properties of others. */
function namesIn(node: Node): Set<string> {
  const names = new Set<string>();
  walk(
    node,
    ({ type, name }) => {
      if (type === 'Identifier' || type === 'JSXIdentifier') names.add(name as string);
    },
    true,
  );
  return names;
}

function walk(node: Node, visit: (node: Node) => void, skipsKeys = false): void {
  visit(node);
  for (const [key, value] of Object.entries(node)) {
    if (skipsKeys && (key === 'key' || key === 'property') && !node.computed && !node.shorthand) continue;
    for (const child of Array.isArray(value) ? value : [value])
      if (typeof (child as Node | null)?.type === 'string') walk(child as Node, visit, skipsKeys);
  }
}
