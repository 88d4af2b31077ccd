/** An element with attributes and children; a text stays a text. Attributes that are null, false or undefined are left out. */
export function element(name, attributes = {}, ...children) {
  const made = document.createElement(name)
  for (const [key, value] of Object.entries(attributes)) if (value !== null && value !== undefined && value !== false) made.setAttribute(key, value === true ? '' : String(value))
  made.append(...children.flat(2).filter((child) => child !== null && child !== false && child !== undefined))
  return made
}

const shapes = {
  pass: ['M8 1.25a6.75 6.75 0 1 0 0 13.5a6.75 6.75 0 1 0 0-13.5z', 'M4.8 8.3l2.3 2.4 4.2-5'],
  fail: ['M1 1h14v14H1z', 'M4.8 4.8l6.4 6.4M11.2 4.8l-6.4 6.4'],
  notDetermined: ['M8 .9L15.1 8 8 15.1.9 8z', 'M6.1 6.6a1.9 1.9 0 1 1 2.7 1.7c-.5.3-.8.6-.8 1.3M8 10.9v1.1'],
  notApplicable: ['M8 1.25a6.75 6.75 0 1 0 0 13.5a6.75 6.75 0 1 0 0-13.5z', 'M5 8h6'],
  attention: ['M8 1.2L15.2 14.6H.8z', 'M8 5.6v4.6M8 11.6v1.3'],
}

/** The same shapes as in a report, which stand beside their words. */
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
