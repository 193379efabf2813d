import { Body, Controller, Param } from '@nestjs/common';
import { type EnrolDevice as EnrolRequest, type RevokeDevice as RevokeRequest, routes } from '@hull-record/contracts';
import { Route } from '../platform/http/route.js';
import { EnrolDevice } from './enrol-device.js';
import { RevokeDevice } from './revoke-device.js';

@Controller()
export class DevicesController {
  constructor(
    private readonly enrol: EnrolDevice,
    private readonly revoke: RevokeDevice,
  ) {}

  @Route(routes.giveEnrolmentCode)
  giveCode(@Param('device') device: string) {
    return this.enrol.giveCode(device);
  }

  @Route(routes.enrolDevice)
  enrolHere(@Body({ schema: routes.enrolDevice.body }) request: EnrolRequest) {
    return this.enrol.run(request);
  }

  @Route(routes.revokeDevice)
  take(@Param('device') device: string, @Body({ schema: routes.revokeDevice.body }) request: RevokeRequest) {
    return this.revoke.run(device, request);
  }
}
