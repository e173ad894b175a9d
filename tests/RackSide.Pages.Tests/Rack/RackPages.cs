using NodaTime;
using RackSide.Pages.Rack;
using RackSide.Tollbooth;
using RackSide.Training.Exercises;
using RackSide.Training.History;
using RackSide.Training.Kit;
using RackSide.Training.Measures;
using RackSide.Training.Plans;
using RackSide.Training.Sessions;
using RackSide.Training.Summary;
using TheRack = RackSide.Tollbooth.Rack;

namespace RackSide.Pages.Tests.Rack;

/// <summary>Every page of a session, each by how a lifter gets there.</summary>
public static class RackPages
{
    private static readonly SessionRecord Monday = TollboothDay.SquatOnMonday(65, 5, 5, 5, 5, 5);

    private static readonly Dictionary<string, Func<TheRack>> ByName = new()
    {
        ["checks"] = () => TheRack.Strength(Monday).Wait(3).Press("E"),
        ["ramp"] = () => TheRack.Strength(Monday).Check().Lift(),
        ["lift-empty-bar"] = () => TheRack.Strength().To(i => i is WorkItem).RestOut(),
        ["search-first-set"] = () => TheRack.Strength().Check().Wait(3),
        ["search-question"] = () => TheRack.Strength().Check().Lift().Wait(4),
        ["search-question-typed"] = () => TheRack.Strength().Check().Lift().Wait(4).Press("12"),
        ["search-second-set"] = () => TheRack.Strength().Check().Lift().Press("25E").Wait(3),
        ["search-question-too-hard"] = () => TheRack.Strength().Check().Lift().Press("25E").Lift().Press("2"),
        ["search-rest"] = () => TheRack.Strength().Check().Lift().Press("25E").Lift().Press("5E").Wait(10),
        ["search-fell-short"] = () => TheRack.Strength().Check().Lift().Press("25E").Wait(30).Press("3E").Wait(2),
        ["lift-load-found"] = () => TheRack.Strength().Check().Lift().Press("25E").Lift().Press("5E").RestOut(),
        ["lift"] = () => Squat(),
        ["lift-first-set-cautioned"] = () => Cautioned().To(i => i is WorkItem).RestOut(),
        ["ramp-cautioned"] = () => Cautioned().To(i => i is RampItem { Number: 2 }),
        ["lift-third-set"] = () => Squat().Lift().RestOut().Lift().Wait(125),
        ["lift-heavy"] = () => new TheRack(TollboothDay.Begin(TollboothDay.Strength, TollboothDay.SquatOnMonday(100, 5, 5, 5, 5, 5))).To(i => i is WorkItem).RestOut().Wait(20).Press("12"),
        ["lift-other-weight"] = () => Squat().Wait(20).Press("*-"),
        ["lift-doubt"] = () => Squat().Wait(20).Press("*85E"),
        ["lift-miss-told"] = () => Squat().Wait(20).Press("3E").Wait(5).Press("E"),
        ["lift-longer-rest-offered"] = () => AfterMiss().To(i => i is WorkItem).RestOut(),
        ["rest-longer-rest-offered"] = () => AfterMiss().To(i => i is WorkItem).RestOut().Lift().Wait(13),
        ["lift-told-sore"] = () => Squat().Wait(3).Press("/7"),
        ["rest"] = () => Squat().Lift().Wait(13),
        ["rest-changes-plates"] = () => TheRack.Strength(Monday).To(i => i is RampItem { Slot: "row" } or WorkItem { Slot: "row" }).Wait(20),
        ["rest-held"] = () => Squat().Lift().Wait(13).Press("0").Wait(60),
        ["rest-form-slipped"] = () => Squat().Lift().Wait(13).Press("1"),
        ["rest-after-miss"] = () => Squat().Wait(20).Press("3E").Wait(2),
        ["change-over"] = () => TheRack.Strength(Monday).To(i => i is WorkItem { Slot: "extension" }).Wait(3),
        ["pair-first"] = () => TheRack.Strength(Monday).To(i => i is WorkItem { Slot: "curl" }).RestOut(),
        ["pair"] = () => TheRack.Strength(Monday).To(i => i is WorkItem { Slot: "extension" }).RestOut(),
        ["hold-ready"] = () => Plank(),
        ["hold-lead-in"] = () => Plank().Wait(2).Press("E").Wait(2),
        ["hold-running"] = () => Plank().Wait(2).Press("E").Wait(17),
        ["hold-target"] = () => Plank().Wait(2).Press("E").Wait(28),
        ["checklist"] = () => TheRack.Skills().Check(),
        ["total"] = () => TheRack.Skills().To(i => i is TotalItem).Wait(30).Press("12E").RestOut(),
        ["seconds-in-all"] = () => Wall().Wait(3).Press("E").Wait(5 + 27).Press("E").RestOut(),
        ["hold-right-side"] = () => Wall().To(i => i is HoldItem).RestOut().Press("E").Wait(18).Press("E").Wait(3),
        ["head-down-question"] = () => Wall().To(i => i is HeadDownItem).RestOut(),
        ["head-down-come-down"] = () => Wall().To(i => i is HeadDownItem).RestOut().Press("1").Wait(3).Press("E").Wait(5 + 11),
        ["menu"] = () => Squat().Lift().Wait(13).Press("/"),
        ["more"] = () => Squat().Lift().Wait(13).Press("/*"),
        ["note"] = () => Squat().Lift().Wait(13).Press("/*1"),
        ["note-text"] = () => Squat().Lift().Wait(13).Press("/*19").Wait(1).Press("5"),
        ["look-back"] = () => Squat().Lift().Press("/*12").Wait(13).Press("/*3"),
        ["look-ahead"] = () => Squat().Lift().Wait(13).Press("/*4"),
        ["order-changed"] = () => Squat().Lift().Wait(13).Press("/12").Wait(1).Press("/1"),
        ["rest-get-ready"] = () => Squat().Lift().Wait(113),
        ["other-exercise"] = () => Squat().Wait(3).Press("/2"),
        ["cut-short"] = () => Squat().Wait(3).Press("/5"),
        ["body-weight"] = () => Squat().Wait(3).Press("/6").Press("72.4"),
        ["leaving"] = () => Squat().Wait(3).Press("/8"),
        ["cue-card"] = () => Squat().Lift().Wait(13).Press("*"),
        ["todays-plan"] = () => Squat().Lift().Wait(13).Press("/1"),
        ["help"] = () => Squat().Wait(3).Press("/9"),
        ["finish-asked-back"] = () => With(s => s with { WeighIns = [new(new LocalDate(2026, 11, 20), Mass.Kg(72.4m))] }).To(i => i is null).Wait(2).Press("82.4E"),
        ["finish-hidden"] = () => With(s => s with { Lifter = s.Lifter with { Body = new() { Hidden = true } } }).To(i => i is null).Wait(2),
        ["menu-hidden"] = () => With(s => s with { Lifter = s.Lifter with { Body = new() { Hidden = true } } }).To(i => i is WorkItem).RestOut().Press("/"),
        ["body-weight-asked-back"] = () => With(s => s with { WeighIns = [new(new LocalDate(2026, 11, 20), Mass.Kg(72.4m))] }).To(i => i is WorkItem).RestOut().Press("/682.4E"),
        ["finish"] = () => TheRack.Strength(Monday).To(i => i is null).Wait(2).Press("72.4"),
    };

    private static readonly PageSize[] Sizes = [new(50, 15), new(80, 24), new(120, 40)];

    public static TheoryData<string, int, int> AtAllSizes
    {
        get
        {
            var data = new TheoryData<string, int, int>();
            foreach (var (name, size) in ByName.Keys.SelectMany(n => Sizes.Append(new PageSize(30, 8)).Select(s => (n, s))))
            {
                data.Add(name, size.Columns, size.Rows);
            }

            return data;
        }
    }

    internal static TheRack At(string name) => ByName[name]();

    internal static Page Drawn(string name, int columns, int rows)
    {
        var rack = At(name);
        return SessionPages.Draw(rack.Session, Week(rack), new PageSize(columns, rows), rack.Now);
    }

    // A back squat that safety bars belong under, as the catalogue of the program has it.
    private static TheRack Cautioned() => With(s => s with
    {
        Catalogue = new Catalogue(s.Catalogue.All.Select(e => e.Id == "back-squat" ? e with { Equipment = [.. e.Equipment, "safety bars"] } : e)),
    });

    private static TheRack Wall() => new TheRack(TollboothDay.Begin(TollboothDay.Wall)).Check();

    private static TheRack AfterMiss() => TheRack.Strength(TollboothDay.SquatOnMonday(65, 5, 5, 5, 5, 4));

    private static TheRack With(Func<SessionSetting, SessionSetting> with)
    {
        var session = TollboothDay.Begin(TollboothDay.Strength, Monday);
        return new TheRack(session with { Setting = with(session.Setting) });
    }

    private static TheRack Squat() => TheRack.Strength(Monday).To(i => i is WorkItem).RestOut();

    private static TheRack Plank() => TheRack.Strength(Monday).To(i => i is HoldItem).RestOut();

    internal static WeekSummary Week(TheRack rack)
    {
        var plan = new Plan("Tollbooth plan", [TollboothDay.Strength, TollboothDay.Skills], new Dictionary<IsoDayOfWeek, string>
        {
            [IsoDayOfWeek.Monday] = "strength-day",
            [IsoDayOfWeek.Wednesday] = "skills-day",
            [IsoDayOfWeek.Friday] = "strength-day",
        });
        return WeekSummary.For(plan, TollboothDay.Catalogue, TollboothDay.Kit, TollboothDay.Ottoline, new TrainingHistory([Monday, rack.Session.Record]), [], TollboothDay.Wednesday);
    }
}
