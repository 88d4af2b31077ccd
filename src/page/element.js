/** An element with attributes and children; a text stays a text. Attributes that are null, false or undefined are left out. */
export function element(name, attributes = {}, ...children) {
  const made = document.createElement(name)
  for (const [key, value] of Object.entries(attributes)) if (value !== null && value !== undefined && value !== false) made.setAttribute(key, value === true ? '' : String(value))
  made.append(...children.flat(2).filter((child) => child !== null && child !== false && child !== undefined))
  return made
}

/** The paths of each sign, as the service draws them in a report. */
let shapes = {}

export function useShapes(given) {
  shapes = given
}

/** A sign that stands beside its word. */
export function mark(shape) {
  const namespace = 'http://www.w3.org/2000/svg'
  const svg = document.createElementNS(namespace, 'svg')
  for (const [key, value] of Object.entries({ viewBox: '0 0 16 16', class: `mark ${shape}`, 'aria-hidden': 'true', focusable: 'false' })) svg.setAttribute(key, value)
  for (const [index, data] of shapes[shape].entries()) {
    const path = document.createElementNS(namespace, 'path')
    path.setAttribute('d', data)
    path.setAttribute('class', index === 0 ? 'outline' : 'sign')
    svg.append(path)
  }
  return svg
}
