using RackSide.Logbook.Storing;
using RackSide.Training.Exercises;
using RackSide.Training.Loading;
using RackSide.Training.Plans;
using RackSide.Training.Racks;

namespace RackSide.Logbook.Tests.Harness;

/// <summary>Any value the logbook may be asked to keep.</summary>
internal static class Gens
{
    public static readonly Gen<string> Text = Gen.OneOf(Gen.String[Gen.Char.AlphaNumeric, 0, 12], Gen.OneOf(new[] { "", "Märsta 2½", "鉄", "a\nb\0c", "-7", "🏋" }.Select(Gen.Const).ToArray()));

    public static readonly Gen<FactId> Id = Gen.Select(Text, Gen.Long[1, long.MaxValue], (rack, n) => new FactId(rack, n));

    public static readonly Gen<Instant> Instant = Gen.Long[-2_000_000_000, 250_000_000_000].Select(Gen.Int[0, 9_999_999], (s, t) => NodaTime.Instant.FromUnixTimeSeconds(s).PlusTicks(t));

    public static readonly Gen<LocalDate> Date = Gen.Int[1, 3_652_059].Select(d => new LocalDate(1, 1, 1).PlusDays(d - 1));

    public static readonly Gen<Duration> Duration = Gen.Long[-100_000_000_000, 100_000_000_000].Select(NodaTime.Duration.FromTicks);

    public static readonly Gen<Mass> Mass = Gen.Select(Gen.Long[-1_000_000_000, 1_000_000_000], Gen.Enum<MassUnit>(), (n, unit) => new Mass(n / 1000m, unit));

    public static readonly Gen<Scheme> Scheme = Gen.OneOf<Scheme>(
        Gen.Select(Gen.Int, Gen.Int, (s, r) => (Scheme)new Scheme.Fixed(s, r)),
        Gen.Select(Gen.Int, Gen.Int, Gen.Int, (s, l, h) => (Scheme)new Scheme.Range(s, l, h)),
        Gen.Select(Gen.Int, Gen.Int, Gen.Int, (s, l, h) => (Scheme)new Scheme.Hold(s, l, h)),
        Gen.Int.Select(r => (Scheme)new Scheme.Total(r)),
        Gen.Select(Gen.Int, Gen.Int, (l, h) => (Scheme)new Scheme.Accumulate(l, h)),
        Gen.Int.Select(m => (Scheme)new Scheme.Tick(m)));

    public static readonly Gen<Prescription> Prescription =
        from slot in Text
        from motion in Gen.Enum<Motion>()
        from exercise in Text
        from scheme in Scheme
        from targets in Gen.Int.List[0, 5]
        from fewer in Gen.Int[0, 9]
        from sides in Gen.Bool
        from asks in Gen.Bool
        from load in Maybe(Mass)
        from ramp in Gen.Select(Mass, Gen.Int, (m, r) => new RampSet(m, r)).List[0, 4]
        from search in Gen.Select(Gen.Int, Mass.List[2, 9], Mass, Maybe(Mass), (r, l, f, m) => new SearchSpan(r, l, f, m))
        from searches in Gen.Bool
        from rest in Duration
        from grouped in Gen.Bool
        from word in Text
        from over in Duration
        from line in Text
        from inputs in Gen.Select(Text, Gen.Int, Text, (n, a, u) => new ReasonInput(n, a / 1000m, u)).List[0, 3]
        from advised in Gen.Bool
        select new Prescription
        {
            Slot = slot,
            Motion = motion,
            Exercise = exercise,
            Scheme = scheme,
            Targets = targets,
            SetsLeftOut = fewer,
            EachSide = sides,
            AsksFirst = asks,
            Load = load,
            Ramp = ramp,
            Search = searches ? search : null,
            Rest = rest,
            Group = grouped ? word : null,
            ChangeOver = over,
            Why = new Reason(word, line) { Inputs = inputs, Advice = advised ? word : null },
        };

    public static readonly Gen<SessionHead> Head =
        from id in Id
        from begun in Instant
        from date in Date
        from zone in Text
        from lifter in Text
        from plan in Text
        from key in Text
        from name in Text
        from kind in Gen.Enum<DayKind>()
        from asked in Prescription.List[0, 4]
        select new SessionHead
        {
            Id = id,
            Begun = begun,
            Date = date,
            Zone = zone,
            Lifter = lifter,
            Plan = plan,
            DayKey = key,
            DayName = name,
            Kind = kind,
            Prescriptions = asked,
        };

    public static readonly Gen<Fact> Fact = Gen.Select(Id, Instant).SelectMany((id, at) => Gen.OneOf<Fact>(
        Gen.Select(Text, Text, Gen.Enum<SetKind>(), Gen.Int, Gen.Int, Gen.Int, Maybe(Mass), Maybe(Gen.Enum<Side>()), (s, e, k, n, t, d, l, side) => (Fact)new SetDone(id, at, s, e, k, n, t, d, l) { Side = side }),
        Id.Select(struck => (Fact)new FactStruck(id, at, struck)),
        Gen.Select(Id, Gen.Bool, (set, slipped) => (Fact)new FormTold(id, at, set, slipped)),
        Gen.Select(Id, Gen.Int, (set, left) => (Fact)new RepsLeftTold(id, at, set, left)),
        Gen.Select(Date, Maybe(Date), Gen.Enum<AwayFor>(), (from, until, why) => (Fact)new AwayTold(id, at, from, until, why)),
        Gen.Select(Date, Gen.Enum<Motion>(), (on, motion) => (Fact)new SoreTold(id, at, on, motion)),
        Gen.Select(Date, Text, Gen.Int, Mass, (on, exercise, reps, load) => (Fact)new SetKnown(id, at, on, exercise, reps, load)),
        Gen.Select(Date, Maybe(Duration), Maybe(Gen.Int), Maybe(Gen.Int), Maybe(Gen.Enum<Soreness>()), (on, slept, food, water, sore) =>
            (Fact)new DayTold(id, at, on) { Slept = slept, Kilocalories = food, Millilitres = water, Sore = sore }),
        Gen.Select(Text, Prescription, (slot, filled) => (Fact)new ExerciseSwapped(id, at, slot, filled)),
        Gen.Select(Maybe(Instant), Duration, (ends, left) => (Fact)new RestChanged(id, at, ends, left)),
        Text.Select(item => (Fact)new ItemTicked(id, at, item)),
        Text.Select(slot => (Fact)new SlotLeftOut(id, at, slot)),
        Text.Select(slot => (Fact)new SlotMoved(id, at, slot)),
        Gen.Select(Text, Maybe(Id), (text, set) => (Fact)new NoteTold(id, at, text, set)),
        Gen.Bool.Select(floor => (Fact)new HeadDownAnswered(id, at, floor)),
        Mass.Select(weight => (Fact)new BodyWeighed(id, at, weight)),
        Date.Select(date => (Fact)new SessionRedated(id, at, date)),
        Id.Select(with => (Fact)new BarShared(id, at, with)),
        Gen.Const((Fact)new BarLeft(id, at)),
        Gen.Const((Fact)new SessionClosed(id, at))));

    public static readonly Gen<BodyProfile> Body =
        from height in Maybe(Gen.Select(Gen.Long[-1_000_000_000, 1_000_000_000], Gen.Enum<LengthUnit>(), (n, unit) => new Height(n / 1000m, unit)))
        from born in Maybe(Date)
        from sex in Maybe(Gen.Enum<FormulaSex>())
        from activity in Gen.Enum<DailyActivity>()
        from rises in Maybe(Gen.Long[0, NodaConstants.NanosecondsPerDay - 1].Select(LocalTime.FromNanosecondsSinceMidnight))
        from withheld in Gen.Bool
        from hidden in Gen.Bool
        select new BodyProfile { Height = height, BornBy = born, Sex = sex, Activity = activity, Rises = rises, NoTargets = withheld, Hidden = hidden };

    public static readonly Gen<Lifter> Lifter = Gen.Select(
        Gen.Select(Text, Text, Gen.Enum<MassUnit>()), Instant, Gen.Bool, Gen.Bool, Gen.OneOf(Gen.Const(BodyProfile.Empty), Body),
        (who, j, c, a, b) => new Lifter(who.Item1, who.Item2, who.Item3, j, c, a) { Body = b });

    public static readonly Gen<GymEvent> GymEvent = Gen.OneOf<GymEvent>(
        Gen.Select(Id, Lifter, Gen.Int[0, 511], (i, l, f) => (GymEvent)new LifterTold(i, l, (LifterFields)f)),
        Head.Select(h => (GymEvent)new SessionStarted(h)),
        Gen.Select(Text, Id, Fact, (l, s, f) => (GymEvent)new SessionFact(l, s, f)),
        Gen.Select(Text, Fact, (l, f) => (GymEvent)new OutsideFact(l, f)),
        Gen.Select(Id, Text, Date, Mass, (i, l, d, m) => (GymEvent)new OutsideWeight(i, l, d, m)),
        Gen.Select(Id, Text, (i, l) => (GymEvent)new LifterErased(i, l)));

    /// <summary>What is kept.</summary>
    public static readonly Gen<Entry> Entry = Gen.OneOf<Entry>(
        Lifter.Select(l => (Entry)new Entry.LifterKept(l)),
        Head.Select(h => (Entry)new Entry.SessionBegun(h)),
        Gen.Select(Id, Fact, (s, f) => (Entry)new Entry.FactAdded(s, f)),
        Gen.Select(Id, Text, Date, Mass, (i, l, d, m) => (Entry)new Entry.WeightKept(new KeptWeight(i, l, d, m))),
        Gen.Select(Text, Fact, (l, f) => (Entry)new Entry.FactTold(new KeptFact(l, f))));

    /// <summary>The same, and what is written of the exchange between racks.</summary>
    public static readonly Gen<Entry> AnyEntry = Gen.OneOf<Entry>(
        Entry,
        Gen.Select(Lifter, Id, Gen.Int[0, 511], (l, i, f) => (Entry)new Entry.LifterKept(l, i, (LifterFields)f)),
        Gen.Select(GymEvent.List[0, 4], Gen.Long[0, long.MaxValue], Id, Gen.Bool, (e, p, i, b) => (Entry)new Entry.Pulled(e, p) { Last = b ? i : null }),
        Gen.Select(Gen.Long[0, long.MaxValue], Text, Gen.Bool, (n, w, b) => (Entry)new Entry.Sent(n, b ? w : null)),
        Gen.Bool.Select(w => (Entry)new Entry.ShareAnew(w)),
        Gen.Const((Entry)new Entry.GymLeft()));

    private static Gen<T?> Maybe<T>(Gen<T> gen)
        where T : struct => Gen.Select(Gen.Bool, gen, (some, value) => some ? value : (T?)null);
}
