/** Names under which this machine alone is reached. */
const LOOPBACK: readonly string[] = ['127.0.0.1', '::1', 'localhost'];

/** Whether an address or name to listen on is of this machine alone. */
export const isLoopbackName = (name: string): boolean => LOOPBACK.includes(name);

/** The same for the host of a URL, where an IPv6 address stands in brackets. */
export const isLoopbackHost = (hostname: string): boolean => isLoopbackName(hostname.replace(/^\[|\]$/g, ''));

/** Whether a connection comes from this machine: 127.0.0.0/8 (RFC 1122, 3.2.1.3) or ::1 (RFC 4291, 2.5.3). */
export const isLoopbackAddress = (address: string): boolean => /^(::1|(::ffff:)?127\.\d+\.\d+\.\d+)$/.test(address);
