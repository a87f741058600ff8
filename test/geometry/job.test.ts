import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import * as z from 'zod/mini';
import { fieldGroups, setAt } from '../../geometry/fields.ts';
import { jobSchema } from '../../geometry/job.ts';
import { jobJsonSchema, newJob } from '../../geometry/job-file.ts';
import { starters } from '../../src/jobs/index.ts';

type Schema = Readonly<Record<string, unknown>>;
type Bag = Readonly<Record<string, unknown>>;

const spoken = new Set(
  [
    '$schema',
    'title',
    'description',
    'default',
    'format',
    'type',
    'const',
    'enum',
    'minimum',
    'maximum',
    'maxLength',
  ].concat(['pattern', 'anyOf', 'properties', 'required', 'additionalProperties', 'items', 'minItems', 'maxItems']),
);

const typeOf = (value: unknown): string => (Array.isArray(value) ? 'array' : value === null ? 'null' : typeof value);

/** The part of JSON Schema 2020-12 that the job's schema speaks, told apart from its source: it knows no zod. */
function accepts(schema: Schema, value: unknown): boolean {
  for (const key of Object.keys(schema)) if (!spoken.has(key)) throw new Error(`keyword ${key} is not read here`);
  const { type, anyOf, enum: choices, properties, required, items } = schema;
  if (anyOf !== undefined) return (anyOf as Schema[]).some((option) => accepts(option, value));
  if (type === 'integer' ? !Number.isInteger(value) : type !== typeOf(value)) return false;
  if ('const' in schema && schema.const !== value) return false;
  if (choices !== undefined && !(choices as unknown[]).includes(value)) return false;
  if (typeof value === 'number')
    return value >= Number(schema.minimum ?? value) && value <= Number(schema.maximum ?? value);
  if (typeof value === 'string') {
    const longest = Number(schema.maxLength ?? value.length);
    return value.length <= longest && new RegExp(String(schema.pattern ?? ''), 'u').test(value);
  }
  if (Array.isArray(value)) {
    if (value.length < Number(schema.minItems ?? 0) || value.length > Number(schema.maxItems)) return false;
    return value.every((part) => accepts(items as Schema, part));
  }
  const bag = value as Bag;
  return (
    ((required ?? []) as string[]).every((key) => Object.hasOwn(bag, key)) &&
    Object.entries(properties as Record<string, Schema>).every(
      ([key, part]) => !Object.hasOwn(bag, key) || accepts(part, bag[key]),
    )
  );
}

const schema = jobJsonSchema();
const job = newJob('2026-03-01');
const worked: unknown = JSON.parse(readFileSync(new URL('../jobs/worked-example.json', import.meta.url), 'utf8'));

const at = (path: string): Schema =>
  path.split('.').reduce<Schema>((part, key) => {
    const inside = key === '*' ? part.items : (part.properties as Bag | undefined)?.[key];
    if (inside === undefined) throw new Error(`the schema has nothing at ${path}`);
    return inside as Schema;
  }, schema);

describe('the schema as JSON Schema', () => {
  it('says that it is draft 2020-12', () => {
    expect(schema.$schema).toBe('https://json-schema.org/draft/2020-12/schema');
    expect(schema.title).toBe('Sagitta job');
  });

  it('lists every field with its title, help, range and preset', () => {
    for (const { path, label, help, kind, min, max, word, choices, preset } of fieldGroups.flatMap((g) => g.fields)) {
      const part = at(path);
      expect(part.title, path).toBe(label);
      expect(part.description, path).toBe(help);
      expect(part.default, path).toBe(preset);
      if (choices !== undefined) expect(part.enum, path).toEqual(Object.keys(choices));
      if (kind === 'word' || kind === 'text') continue;
      const number = word === undefined ? part : (part.anyOf as Schema[]).find((option) => option.type === 'number');
      expect(number, path).toMatchObject({ minimum: min, maximum: max });
      if (word !== undefined) expect(part.anyOf, path).toContainEqual({ type: 'string', const: word });
    }
  });

  it('accepts what the reader accepts: the starters, the worked example, a new job', () => {
    for (const value of [...starters.map(({ text }) => JSON.parse(text) as unknown), worked, job]) {
      expect(accepts(schema, value)).toBe(true);
      expect(z.safeParse(jobSchema, value).success).toBe(true);
    }
  });

  it.each<[string, unknown]>([
    ['guitar.scale', 299.9],
    ['guitar.scale', 1000.1],
    ['guitar.scale', '640'],
    ['guitar.scale', null],
    ['guitar.frets', 20.5],
    ['guitar.topRadius', 'round'],
    ['bridge.footprint', 'oval'],
    ['name', 'x'.repeat(201)],
    ['date', '2026-02-30'],
    ['strings.list', []],
    ['strings.list.E2.cents', 61],
    ['guitar.scale', 'strung'],
    ['guitar.neckPlaneHeight', 'frets'],
    ['slot.line', 'worst'],
    ['strung.relief', -0.1],
    ['limits.exposure', { from: 'little' }],
    ['setup.log', [{ id: 'P1', note: '' }]],
    ['setup.log', Array.from({ length: 61 }, (_, k) => ({ id: `P${k}`, note: '', readings: [] }))],
    ['strings.list.E2.id', 'a.b'],
    ['strings.list.E2.core', 'none'],
    ['bridge', {}],
    ['pins', []],
    ['version', 1],
    ['alternatives.list', [{ id: 'A', name: '' }]],
    ['format', 'another'],
  ])('refuses %s as %j, as the reader does', (path, value) => {
    const bad = setAt(job, path, value);
    expect(accepts(schema, bad)).toBe(false);
    expect(z.safeParse(jobSchema, bad).success).toBe(false);
  });

  it('lets keys through that it does not know', () => {
    expect(accepts(schema, setAt(job, 'bridge.colour', 'brown'))).toBe(true);
  });

  it('lets a range of the job’s own be given in part', () => {
    const own = setAt(job, 'limits.exposure', { from: 2.2, to: 'usual' });
    expect(accepts(schema, own)).toBe(true);
    expect(z.safeParse(jobSchema, own).success).toBe(true);
  });
});

it('never compiles code at run time, as a strict content security policy demands', () => {
  expect(z.config().jitless).toBe(true);
});
