-- The gym's events, insert or ignore. Racks read the table and write through two functions only.
create table rackside.gym (
  id text not null default gen_random_uuid()::text,
  made timestamptz not null default now());
insert into rackside.gym default values;

create table rackside.event (
  position bigint generated always as identity primary key,
  rack text not null,
  count bigint not null,
  lifter text not null,
  body json not null,
  unique (rack, count));
create index event_by_lifter on rackside.event (lifter);

create table rackside.erased (lifter text primary key);

-- One writer at a time, until its transaction ends: so positions appear in their order, and who has read up to one has
-- missed none before it. A push is one statement, so the lock never waits for a network.
create function rackside.push(racks text[], counts bigint[], lifters text[], bodies text[]) returns integer
language plpgsql security definer set search_path = rackside, pg_temp as $$
declare
  stored integer;
begin
  perform pg_advisory_xact_lock(7249300);
  insert into event (rack, count, lifter, body)
  select e.rack, e.count, e.lifter, e.body::json
  from unnest(racks, counts, lifters, bodies) with ordinality as e (rack, count, lifter, body, place)
  where not exists (select from erased where erased.lifter = e.lifter)
  order by e.place
  on conflict (rack, count) do nothing;
  get diagnostics stored = row_count;
  return stored;
end $$;

-- Everything of a lifter goes, and an event that says so stays. Late racks cannot bring anything of it back: push asks erased.
create function rackside.erase(rack text, count bigint, lifter text, body text) returns void
language plpgsql security definer set search_path = rackside, pg_temp as $$
begin
  perform pg_advisory_xact_lock(7249300);
  insert into erased values (erase.lifter) on conflict do nothing;
  delete from event where event.lifter = erase.lifter and event.body ->> 'is' <> 'erased';
  insert into event (rack, count, lifter, body)
  values (erase.rack, erase.count, erase.lifter, erase.body::json)
  on conflict do nothing;
end $$;

revoke all on function rackside.push(text[], bigint[], text[], text[]), rackside.erase(text, bigint, text, text) from public;
