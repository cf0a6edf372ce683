-- Several schools live on one server. Every table but the few named in the catalogue test is a tenant table: its keys
-- lead with school_id, and row-level security shows a transaction the rows of the schools it has set, no others.

create table school (
    id         uuid        primary key,
    code       text        not null unique,
    name       text        not null,
    zone       text        not null,      -- IANA name; days and calendar months are counted in it
    language   text        not null,      -- BCP 47
    created_at timestamptz not null,
    constraint code_is_short_and_plain check (code ~ '^[a-z][a-z0-9-]{1,30}$'),
    constraint name_is_not_empty check (length(btrim(name)) between 1 and 120)
);

-- A link that lets its holder set up the first school of an empty server, once.
create table set_up_link (
    token_digest bytea       primary key,   -- SHA-256; the token itself is only printed
    created_at   timestamptz not null,
    used_at      timestamptz
);

grant select on ${flyway:table} to ${server_role};
grant select, insert on school to ${server_role};
grant select, insert, update (used_at), delete on set_up_link to ${server_role};

-- Makes a table a tenant table. The server names its schools in groundline.schools for the length of a transaction: one
-- for each request, several only for the writer of answers. The owner sees all rows, or a later migration would
-- silently change none.
create procedure protect_tenant_table(tenant_table regclass, privileges text)
language plpgsql as $$
declare
    mine constant text :=
        'school_id = any (string_to_array(nullif(current_setting(''groundline.schools'', true), ''''), '','')::uuid[])';
begin
    execute format('alter table %s enable row level security', tenant_table);
    execute format('alter table %s force row level security', tenant_table);
    execute format('create policy rows_of_the_schools_set on %s using (%s) with check (%s)', tenant_table, mine, mine);
    execute format('create policy owner_sees_all on %s to %I using (true) with check (true)', tenant_table, current_user);
    execute format('grant %s on %s to ${server_role}', privileges, tenant_table);
end
$$;
