import { Module } from '@nestjs/common';
import { DevicesController } from './devices.controller.js';
import { EnrolDevice } from './enrol-device.js';
import { RevokeDevice } from './revoke-device.js';

/** Browsers that are devices of the shop: enrolled by a code from the desk, and revoked. */
@Module({ controllers: [DevicesController], providers: [EnrolDevice, RevokeDevice] })
export class DevicesModule {}
