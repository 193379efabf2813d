import { Module } from '@nestjs/common';
import { ChangeRoles } from './change-roles.js';
import { ListPeople } from './list-people.query.js';
import { OpenPlant } from './open-plant.js';
import { PeopleController } from './people.controller.js';
import { RegisterDevice } from './register-device.js';
import { RegisterPerson } from './register-person.js';

/** People by badge, their roles, and the devices they enter facts on. */
@Module({
  controllers: [PeopleController],
  providers: [RegisterPerson, RegisterDevice, ChangeRoles, OpenPlant, ListPeople],
})
export class PeopleModule {}
