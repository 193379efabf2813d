import type { ReactNode } from 'react';
import { Empty } from '../ui/page.js';
import { Text } from '../words/text.js';

const apiPage = (inside: ReactNode) => <a href="/api/docs">{inside}</a>;

/** Said where no hull is recorded at all. */
export const NoHulls = () => (
  <Empty>
    <Text of="record.noHulls" with={{ api: apiPage }} />
  </Empty>
);

/** Said where no lot is recorded at all. */
export const NoLots = () => (
  <Empty>
    <Text of="record.noLots" with={{ api: apiPage }} />
  </Empty>
);
