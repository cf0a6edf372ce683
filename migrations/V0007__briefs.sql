-- That somebody has read a topic's brief, by their own word. Of several for one version the first stands.
create table brief_acknowledgement (
    school_id       uuid        not null,
    subject_id      uuid        not null,
    topic           text        not null,       -- its id in the syllabus
    version         text        not null,       -- of the brief: the SHA-256 of all that is read
    acknowledged_at timestamptz not null,
    primary key (school_id, subject_id, topic, version),
    foreign key (school_id, subject_id) references subject,
    constraint version_is_a_digest check (version ~ '^[0-9a-f]{64}$')
);

call protect_tenant_table('brief_acknowledgement', 'select, insert');
