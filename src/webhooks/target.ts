import { isIP } from 'node:net'
import ipaddr from 'ipaddr.js'

/** Where deliveries may go: to public addresses by https; in development also to this machine. */
export type TargetPolicy = 'public' | 'publicAndLoopback'

const longest = 2_000

/** Names that never lead to a public address: RFC 6761, 6762, 7686, 8375 and 9476, and what networks use inside. */
const innerNames = ['localhost', 'local', 'internal', 'intranet', 'lan', 'home', 'corp', 'private', 'arpa', 'onion', 'test', 'invalid', 'example', 'alt']

/** Why an address cannot be a target; undefined when it can. Where its name leads is looked up at each delivery. */
export function targetFault(text: string, policy: TargetPolicy): string | undefined {
  if (text.length > longest) return `is longer than ${longest} characters.`
  if (!URL.canParse(text)) return 'is not an address like "https://receiver.example.com/wythe".'
  const url = new URL(text)
  if (url.username !== '' || url.password !== '') return 'must not hold a user name or a password: deliveries are signed instead.'
  if (url.hash !== '') return 'must not have a fragment: it is never sent.'
  if (policy === 'publicAndLoopback' && isLoopbackHost(url)) return url.protocol === 'https:' || url.protocol === 'http:' ? undefined : 'must be an https address.'
  if (url.protocol !== 'https:') return 'must be an https address.'
  return hostFault(hostOf(url))
}

/** Whether a target may be reached at an address that its name led to. */
export function mayReach(url: URL, address: string, policy: TargetPolicy): boolean {
  return policy === 'publicAndLoopback' && isLoopbackHost(url) ? isLoopback(address) : isPublic(address)
}

/** The host without brackets and without the dot that may end a name. */
export function hostOf({ hostname }: URL): string {
  return hostname.replace(/^\[(.*)\]$/, '$1').replace(/\.$/, '')
}

function hostFault(host: string): string | undefined {
  if (isIP(host) !== 0) return isPublic(host) ? undefined : `leads to ${host}, which is not a public address.`
  const last = host.split('.').at(-1) ?? ''
  if (!host.includes('.') || innerNames.includes(last)) return `names "${host}", which is no public host.`
  return undefined
}

/** The global unicast space; everything IANA has set aside is out, and so is every way of wrapping an IPv4 address into IPv6. */
export function isPublic(address: string): boolean {
  if (isIP(address) === 0 || !ipaddr.isValid(address)) return false
  const parsed = ipaddr.parse(address)
  if (parsed.range() !== 'unicast') return false
  return parsed.kind() === 'ipv4' || parsed.match(globalUnicast)
}

const globalUnicast = ipaddr.parseCIDR('2000::/3') as [ipaddr.IPv6, number]

function isLoopbackHost(url: URL): boolean {
  const host = hostOf(url)
  return host === 'localhost' || isLoopback(host)
}

function isLoopback(address: string): boolean {
  return ipaddr.isValid(address) && ipaddr.parse(address).range() === 'loopback'
}
