import openapiTypescript, { astToString, type OpenAPI3 } from 'openapi-typescript'

/** The types of every path, body and answer of the contract, as TypeScript. */
export async function clientTypes(openapi: string): Promise<string> {
  const text = astToString(await openapiTypescript(JSON.parse(openapi) as OpenAPI3))
  return `// Made by npm run generate from openapi/openapi.json.\n${text}`
}
