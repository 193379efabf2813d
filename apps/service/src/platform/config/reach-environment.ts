import { z } from 'zod';

/** The settings that say how the service is reached. */
export const ReachEnvironment = z.object({
  HOST: z.string().default('127.0.0.1'),
  TLS_CERT: z.string().optional(),
  TLS_KEY: z.string().optional(),
  TRUSTED_PROXY: z.string().optional(),
  PUBLIC_URL: z
    .url({ protocol: /^https$/, error: 'is not an https address, such as https://hulls.example.org' })
    .optional(),
  OPENID_ISSUER: z.url({ protocol: /^https?$/ }).optional(),
  OPENID_CLIENT_ID: z.string().optional(),
  OPENID_CLIENT_SECRET: z.string().optional(),
  OPENID_NAME: z.string().trim().min(1).max(40).default('the office'),
});
export type ReachSet = z.output<typeof ReachEnvironment>;
