import { Column, Entity, PrimaryColumn } from 'typeorm';

/** Which client-made ids were used, each with a digest of its request. Small, never partitioned. */
@Entity({ schema: 'fact', name: 'client_id' })
export class ClientIdEntity {
  @PrimaryColumn('uuid')
  id!: string;

  @Column('bytea')
  digest!: Buffer;
}
