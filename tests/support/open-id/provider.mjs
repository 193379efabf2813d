import Provider from 'oidc-provider';
import { once } from 'node:events';
import { createServer } from 'node:http';

/**
 * A provider of OpenID Connect on loopback, in a process of its own: anybody signs in by whatever name they type.
 *
 * It has two clients, `hulls` and `other`, and prints its issuer. As native ones they may be sent back to any port of
 * this machine (RFC 8252, section 7.3).
 */
const server = createServer().listen(Number(process.env.PORT ?? 0), '127.0.0.1');
await once(server, 'listening');
const issuer = `http://${process.env.SITE ?? '127.0.0.1'}:${server.address().port}`;

const client = (id) => ({
  client_id: id,
  client_secret: `secret of ${id}`,
  application_type: 'native',
  redirect_uris: ['http://127.0.0.1/api/open-id/return'],
  grant_types: ['authorization_code'],
  token_endpoint_auth_method: process.env.AUTH_METHOD ?? 'client_secret_basic',
});

const provider = new Provider(issuer, {
  clients: [client('hulls'), client('other')],
  clientAuthMethods: [process.env.AUTH_METHOD ?? 'client_secret_basic'],
  cookies: { keys: ['of the tests'] },
});
server.on('request', provider.callback());
console.log(issuer);
