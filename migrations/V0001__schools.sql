create table school (id uuid primary key, code text not null unique);
