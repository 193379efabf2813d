-- Run once by the container, as its administrator, when its volume is empty: the two roles and the database.
-- The owner migrates; the service can add facts and change none. Passwords come from the environment.
\set ON_ERROR_STOP on
\getenv owner_password HULL_RECORD_OWNER_PASSWORD
\getenv service_password HULL_RECORD_SERVICE_PASSWORD
create role hull_record_owner login password :'owner_password';
create role hull_record_service login password :'service_password';
alter role hull_record_service set random_page_cost = 1.1;
alter role hull_record_service set jit = off;
create database hull_record owner hull_record_owner encoding 'UTF8' locale_provider builtin locale 'C.UTF-8' template template0;
