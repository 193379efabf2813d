interface CameraProps {
  readonly children: string;
  readonly onPhotos: (photos: readonly File[]) => void;
}

/** Opens the camera of the device, or its photos; several may be chosen, and it may be pressed again. */
export const Camera = ({ children, onPhotos }: CameraProps) => (
  <label className="btn camera">
    <input
      type="file"
      accept="image/*"
      capture="environment"
      multiple
      onChange={({ target }) => {
        onPhotos([...(target.files ?? [])]);
        // The same photo may be chosen again after it was taken off.
        target.value = '';
      }}
    />
    {children}
  </label>
);
