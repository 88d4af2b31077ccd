import { cp, mkdir, writeFile } from 'node:fs/promises'
import { join } from 'node:path'

/** Takes the page to try the service along, and gathers the GraphQL explorer's published files into dist/, so that it works without the internet and the service does not depend on its packages. */
const target = 'dist/explorer'
const files = ['react/umd/react.production.min.js', 'react-dom/umd/react-dom.production.min.js', 'graphiql/graphiql.min.js', 'graphiql/graphiql.min.css']

const startQuery = `# What holds for one opening
{
  evaluation(
    jurisdiction: "us-xa-101-2400000"
    asOf: "2026-03-01"
    opening: {
      lengthUnit: in
      opening: { kind: window
        width: "48", height: "60" }
      head: {
        support: { kind: looseSteelAngle
          bearing: ["4", "3 1/2"] }
      }
    }
  ) {
    summary { verdict fail notDetermined }
    findings {
      title outcome member
      measured { text }
      required { text }
      margin { inchPound si }
    }
    nextToMeasure { title holdPoint decides }
  }
}`

const script = `const fetcher = async (request, { headers } = {}) => (await fetch('/graphql', { method: 'POST', headers: { 'content-type': 'application/json', ...headers }, body: JSON.stringify(request) })).json();
ReactDOM.createRoot(document.getElementById('explorer')).render(React.createElement(GraphiQL, { fetcher, defaultQuery: ${JSON.stringify(startQuery)} }));`

const index = `<!doctype html><html lang="en"><meta charset="utf-8"><meta name="viewport" content="width=device-width, initial-scale=1"><title>Wythe: GraphQL explorer</title>
<link rel="stylesheet" href="graphiql.min.css"><link rel="stylesheet" href="explorer.css"><div id="explorer">Loading …</div>
<script src="react.production.min.js"></script><script src="react-dom.production.min.js"></script><script src="graphiql.min.js"></script><script src="explorer.js"></script></html>`

await cp('src/page', 'dist/page', { recursive: true })
await mkdir(target, { recursive: true })
for (const file of files) await cp(join('node_modules', file), join(target, file.slice(file.lastIndexOf('/') + 1)))
await writeFile(join(target, 'explorer.js'), script)
await writeFile(join(target, 'explorer.css'), 'html,body,#explorer{height:100%;margin:0}.graphiql-logo{display:none}')
await writeFile(join(target, 'index.html'), index)
