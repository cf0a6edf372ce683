-- The language in which somebody wants to be asked; no row: English. It tells something about a person, so it can be
-- erased as a name can, and no record depends on it: each item keeps the language that it was put in.
create table question_language (
    school_id  uuid not null,
    subject_id uuid not null,
    language   text not null,
    primary key (school_id, subject_id),
    foreign key (school_id, subject_id) references subject,
    constraint language_is_a_tag check (language ~ '^[a-z]{2,3}(-[A-Za-z0-9]{2,8})*$')
);

call protect_tenant_table('question_language', 'select, insert, update, delete');
