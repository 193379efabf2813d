import { Button, DropZone, FileTrigger, isFileDropItem, Text } from 'react-aria-components';

interface DropFileProps {
  readonly label: string;
  readonly button: string;
  /** Media type of what is taken. */
  readonly type: string;
  readonly onFile: (file: Blob) => void;
}

/** A place to drop one file on; or it is chosen with the button. */
export const DropFile = ({ label, button, type, onFile }: DropFileProps) => (
  <DropZone
    className="drop"
    onDrop={({ items }) => {
      const [item] = items.filter(isFileDropItem);
      if (item) void item.getFile().then(onFile);
    }}
  >
    <Text slot="label">{label}</Text>
    <FileTrigger
      acceptedFileTypes={[type]}
      onSelect={(files) => {
        const [file] = files ?? [];
        if (file) onFile(file);
      }}
    >
      <Button className="btn">{button}</Button>
    </FileTrigger>
  </DropZone>
);
