import { Body, Controller } from '@nestjs/common';
import {
  routes,
  type RegisterDevice as DeviceRequest,
  type RegisterPerson as PersonRequest,
} from '@hull-record/contracts';
import { Route } from '../platform/http/route.js';
import { ListPeople } from './list-people.query.js';
import { RegisterDevice } from './register-device.js';
import { RegisterPerson } from './register-person.js';

@Controller()
export class PeopleController {
  constructor(
    private readonly registerPerson: RegisterPerson,
    private readonly registerDevice: RegisterDevice,
    private readonly list: ListPeople,
  ) {}

  @Route(routes.registerPerson)
  addPerson(@Body({ schema: routes.registerPerson.body }) request: PersonRequest) {
    return this.registerPerson.run(request);
  }

  @Route(routes.listPeople)
  people() {
    return this.list.people();
  }

  @Route(routes.registerDevice)
  addDevice(@Body({ schema: routes.registerDevice.body }) request: DeviceRequest) {
    return this.registerDevice.run(request);
  }

  @Route(routes.listDevices)
  devices() {
    return this.list.devices();
  }
}
