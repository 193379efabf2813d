import type { ReactNode, Ref } from 'react';
import { Button as KitButton } from 'react-aria-components';

interface ButtonProps {
  readonly children: ReactNode;
  readonly onPress?: () => void;
  readonly type?: 'button' | 'submit';
  /** It was pressed and what it does is not done: it keeps the focus and does not answer. */
  readonly busy?: boolean;
  /** It cannot be pressed yet; the page says beside it what is missing. */
  readonly disabled?: boolean;
  readonly className?: string;
  readonly label?: string;
  readonly ref?: Ref<HTMLButtonElement>;
}

/** A button: outlined, as everything that is not the one thing to do. */
export const Button = ({
  children,
  busy = false,
  disabled = false,
  className = 'btn',
  label,
  onPress,
  type = 'button',
  ref,
}: ButtonProps) => (
  <KitButton
    type={type}
    className={className}
    isPending={busy}
    isDisabled={disabled}
    {...(onPress ? { onPress } : {})}
    {...(label === undefined ? {} : { 'aria-label': label })}
    {...(ref ? { ref } : {})}
  >
    {children}
  </KitButton>
);
