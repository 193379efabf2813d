import { isIP } from 'node:net';
import { ConfigWrong } from './config-wrong.js';

const LONGEST: Readonly<Record<number, number>> = { 4: 32, 6: 128 };

/** An address, or a network that is not the whole of them. */
const isPeer = (text: string): boolean => {
  const [address = '', prefix, ...more] = text.split('/');
  const longest = LONGEST[isIP(address)];
  if (longest === undefined || more.length > 0) return false;
  return prefix === undefined || (/^[1-9]\d*$/.test(prefix) && Number(prefix) <= longest);
};

/**
 * Reads the addresses of proxies whose word about the caller is taken, parted by commas.
 *
 * @throws ConfigWrong for what is no address: a name would be looked up where others may answer, and everybody is no proxy
 */
export const readTrustedProxy = (given = ''): readonly string[] => {
  const peers = given
    .split(',')
    .map((each) => each.trim())
    .filter(Boolean);
  for (const peer of peers.filter((each) => !isPeer(each)))
    throw new ConfigWrong(
      `TRUSTED_PROXY: ${peer} is not the address of a proxy. Name addresses or networks, such as 127.0.0.1 or 172.30.5.0/24, parted by commas.`,
    );
  return peers;
};
