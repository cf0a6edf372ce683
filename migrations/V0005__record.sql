-- The training record: what was talked through, shown, and signed.

-- A talk about an answer to a safety-critical question that was wrong or missing.
create table debrief (
    school_id   uuid        not null,
    id          uuid        not null,
    subject_id  uuid        not null,
    item_id     uuid        not null,
    debriefed_by uuid       not null,
    outcome     text        not null,
    happened_at timestamptz not null,
    entered_at  timestamptz not null,
    note_id     uuid,
    primary key (school_id, id),
    foreign key (school_id, subject_id) references subject,
    foreign key (school_id, item_id) references item,
    foreign key (school_id, debriefed_by) references subject (school_id, id),
    constraint outcome_is_known check (outcome in ('explained back', 'not yet understood'))
);
create index debrief_of_item on debrief (school_id, item_id);
create index debrief_of_subject on debrief (school_id, subject_id);

-- A thing shown and observed.
create table demonstration (
    school_id     uuid        not null,
    id            uuid        not null,
    subject_id    uuid        not null,
    demonstration text        not null,       -- its id in the syllabus
    observed_by   uuid        not null,
    happened_at   timestamptz not null,
    entered_at    timestamptz not null,
    note_id       uuid,
    primary key (school_id, id),
    foreign key (school_id, subject_id) references subject,
    foreign key (school_id, observed_by) references subject (school_id, id)
);
create index demonstration_of_subject on demonstration (school_id, subject_id);

-- A named instructor's entry that a module's theory is complete.
create table sign_off (
    school_id        uuid        not null,
    id               uuid        not null,
    subject_id       uuid        not null,
    module           text        not null,
    discipline       text        not null,
    basis            uuid        not null,     -- the sitting it rests on
    instructor_id    uuid        not null,
    authorisation_id uuid        not null,
    happened_at      timestamptz not null,
    entered_at       timestamptz not null,
    primary key (school_id, id),
    unique (school_id, id, subject_id),
    foreign key (school_id, subject_id) references subject,
    foreign key (school_id, basis) references sitting (school_id, id),
    foreign key (school_id, instructor_id) references subject (school_id, id),
    foreign key (school_id, authorisation_id) references authorisation (school_id, id),
    constraint nobody_signs_for_themselves check (instructor_id <> subject_id),
    constraint discipline_is_known check (discipline in ('paraglider', 'hang glider'))
);
create index sign_off_of_subject on sign_off (school_id, subject_id, module);

-- The counter-entry of a sign-off. Nothing is edited; a sign-off is reversed at most once.
create table reversal (
    school_id   uuid        not null,
    sign_off_id uuid        not null,
    subject_id  uuid        not null,
    reversed_by uuid        not null,
    happened_at timestamptz not null,
    entered_at  timestamptz not null,
    note_id     uuid        not null,          -- the reason
    primary key (school_id, sign_off_id),
    foreign key (school_id, sign_off_id, subject_id) references sign_off (school_id, id, subject_id),
    foreign key (school_id, reversed_by) references subject (school_id, id)
);

call protect_tenant_table('debrief', 'select, insert');
call protect_tenant_table('demonstration', 'select, insert');
call protect_tenant_table('sign_off', 'select, insert');
call protect_tenant_table('reversal', 'select, insert');
