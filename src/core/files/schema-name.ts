/**
 * A file may name the schema it follows (`$schema`), so that an editor helps while it is written by hand. The doors do
 * not ask for it.
 */
export function withoutSchemaName(value: unknown): unknown {
  if (typeof value !== 'object' || value === null || Array.isArray(value) || !('$schema' in value)) return value;
  const { $schema: _, ...rest } = value;
  return rest;
}
