-- A store as version 0001 of the tables left it. Never changed; a later version must open it.
CREATE TABLE "kysely_migration" ("name" varchar(255) not null primary key, "timestamp" varchar(255) not null);
CREATE TABLE "kysely_migration_lock" ("id" varchar(255) not null primary key, "is_locked" integer default 0 not null);
CREATE TABLE "era" ("number" integer primary key, "begun" bigint not null);
CREATE TABLE "version" ("kind" text not null, "id" text not null, "version" integer not null, "era" integer not null references "era" ("number") on delete cascade, "at" bigint not null, "by" text not null, "why" text not null, "message" text, "kept_start" integer, "kept_end" integer, "state" text not null, "outcome" text, "digest" text not null, constraint "version_key" primary key ("kind", "id", "version"), constraint "version_message" unique ("kind", "id", "message"));
insert into kysely_migration values ('0001-versions', '2026-11-25T14:28:46.743Z');
insert into kysely_migration_lock values ('migration_lock', 0);
insert into era values (1, 0);
insert into version values ('conversation', 'garage', 1, 1, 1700000000000, 'maud', 'said', 'm1', null, null, '["rough inside","square tips"]', '{"text":"answer to m1"}', 'QDY9Xf91UWc050078oBqjrFkGEGmbs28X9jmW6JYUxQ');
insert into version values ('conversation', 'garage', 2, 1, 1700000000000, 'maud', 'answered', null, 29, 1, ',"two drain notches"', null, 'S5JB6mKs3-OjpsbynWFk3Z3swhOu-GrWf_rP_9TemwU');
insert into version values ('conversation', 'Žluť', 1, 1, 1700000000000, 'maud', 'said', 'm1', null, null, '["鏡"]', '{"text":"answer to m1"}', 'ByMX-5xJttn0VSUzIwAt4tOxOI51JJT_xdRb28ff52I');
