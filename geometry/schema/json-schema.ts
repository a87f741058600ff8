import * as z from 'zod/mini';
import { words } from './field.ts';

/** The JSON Schema (draft 2020-12) of a file that a schema describes, with each field's label, help and preset. */
export const jsonSchemaOf = (
  schema: z.core.$ZodType,
  title: string,
  description: string,
): Readonly<Record<string, unknown>> => {
  const written = z.toJSONSchema(schema, {
    target: 'draft-2020-12',
    override: ({ zodSchema, jsonSchema }) => {
      const field = words.get(zodSchema);
      if (field === undefined) return;
      jsonSchema.title = field.label;
      jsonSchema.description = field.help;
      if (field.preset !== undefined) jsonSchema.default = field.preset;
    },
  });
  return { ...written, title, description };
};
