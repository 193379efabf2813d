import type { DeviceView } from '@hull-record/contracts';
import { useQuery } from '@tanstack/react-query';
import { act, post } from '../api/ask.js';
import { devicesQuery } from '../api/queries-of-people.js';
import { useMay } from '../api/use-may.js';
import { Answer } from '../asked/answer.js';
import { ActButton } from '../entry/act-button.js';
import { Allowed } from '../entry/allowed.js';
import { RecordForm } from '../entry/record-form.js';
import { mark } from '../marks/mark.js';
import { Fold } from '../ui/fold.js';
import { Empty, Page, Section } from '../ui/page.js';
import { useWords } from '../words/use-words.js';
import { OneTimeCode } from './one-time-code.js';
import { PeopleWays } from './people-ways.js';

/** The devices of the shop: registered, enrolled by a one-time code, revoked; and where they must not be used. */
export const DevicesPage = () => {
  const { t } = useWords();
  const query = useQuery(devicesQuery);
  return (
    <Page title={t('people.devices')} name={t('people.devices')}>
      <PeopleWays />
      <p className="caution" role="note">
        {t('people.nfpa')}
      </p>
      <Section name={t('people.registerDevice')}>
        <Allowed to="registerDevice" what={t('people.registerDevice')}>
          <RegisterDevice />
        </Allowed>
      </Section>
      <Section name={t('people.knownDevices')}>
        <Answer what={t('people.theDevices')} query={query}>
          {(devices) =>
            devices.length === 0 ? (
              <Empty>{t('people.noDevices')}</Empty>
            ) : (
              <ul className="plain ruled">
                {devices.map((device) => (
                  <li key={device.id}>
                    <Device of={device} />
                  </li>
                ))}
              </ul>
            )
          }
        </Answer>
      </Section>
    </Page>
  );
};

const RegisterDevice = () => {
  const { t } = useWords();
  return (
    <RecordForm
      groups={[
        {
          fields: [
            { name: 'code', label: t('people.deviceCode') },
            { name: 'description', label: t('people.description'), kind: 'words' },
            { name: 'rated', label: t('people.rated'), kind: 'tick' },
          ],
        },
      ]}
      button={t('people.registerDo')}
      send={(said, envelope) =>
        post(
          '/api/devices',
          {},
          {
            ...envelope,
            code: said('code'),
            description: said('description'),
            ratedForClassifiedArea: said('rated') === 'yes',
          },
        )
      }
      done={({ result }) => <p>{mark('made', t('people.deviceRegistered', { code: result.code }))}</p>}
    />
  );
};

const Device = ({ of: { code, description, ratedForClassifiedArea, enrolled } }: { readonly of: DeviceView }) => {
  const { t } = useWords();
  const may = useMay();
  return (
    <>
      <b className="n">{code}</b> {description}{' '}
      {enrolled ? mark('made', t('people.enrolled')) : mark('to come', t('people.notEnrolled'))}{' '}
      {ratedForClassifiedArea ? mark('inside', t('people.isRated')) : mark('near', t('people.notRated'))}
      {may('giveEnrolmentCode') ? (
        <Fold summary={t('people.enrolOrRevoke', { code })}>
          <p className="note">{t('people.enrolHow')}</p>
          <ActButton
            words={t('people.giveEnrolment')}
            act={() => act('/api/devices/:device/enrolment-codes', { device: code })}
            done={(given) => <OneTimeCode code={given} />}
          />
          <RecordForm
            groups={[{ fields: [{ name: 'reason', label: t('people.whyRevoke'), kind: 'words' }] }]}
            button={t('people.revoke')}
            sure={() => t('people.revokeSure', { code })}
            send={(said, envelope) =>
              post('/api/devices/:device/revocations', { device: code }, { ...envelope, reason: said('reason') })
            }
            done={() => <p>{mark('made', t('people.revoked', { code }))}</p>}
          />
        </Fold>
      ) : null}
    </>
  );
};
