import { DropFile } from '../ui/drop-file.js';
import { useWords } from '../words/use-words.js';

/** Takes a PDF, dropped or chosen. */
export const FileToCheck = ({ onFile }: { readonly onFile: (file: Blob) => void }) => {
  const { t } = useWords();
  return (
    <DropFile label={t('certificate.drop')} button={t('certificate.choose')} type="application/pdf" onFile={onFile} />
  );
};
