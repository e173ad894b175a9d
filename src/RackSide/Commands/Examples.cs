using System.CommandLine;

namespace RackSide.Commands;

/// <summary>What the help begins with. Every line can be run as it stands; a test does.</summary>
internal static class Examples
{
    private static readonly (string Line, string Does) Today = ("rackside today", "what today asks for, and why");
    private static readonly (string Line, string Does) Week = ("rackside summary", "this week in a few lines");
    private static readonly (string Line, string Does) Calendar = ("rackside calendar", "the next four weeks");
    private static readonly (string Line, string Does) Away = ("rackside away 2026-12-20 2027-01-03 --for holiday", "two weeks away");
    private static readonly (string Line, string Does) Squat = ("rackside history squat", "every squat day, set by set");
    private static readonly (string Line, string Does) Plates = ("rackside plates 62.5", "which plates go on each side");
    private static readonly (string Line, string Does) Check = ("rackside check", "where the files are, and whether all is well");
    private static readonly (string Line, string Does) Backup = ("rackside backup", "the logbook in one file, beside it");
    private static readonly (string Line, string Does) Export = ("rackside export record.json", "everything, for another program");
    private static readonly (string Line, string Does) Plan = ("rackside plan check my-plan.yaml", "every mistake in a plan, by line");
    private static readonly (string Line, string Does) Plans = ("rackside plan list", "the plans to choose from");
    private static readonly (string Line, string Does) Use = ("rackside plan use two-days", "train by that plan from here on");
    private static readonly (string Line, string Does) Try = ("rackside plan try my-plan.yaml --lifters 20", "a year of twenty invented lifters: a first look");

    /// <summary>The examples of a command, the most wanted first.</summary>
    public static IReadOnlyList<(string Line, string Does)> Of(Command command) => command switch
    {
        TodayCommand => [Today, ("rackside today --minutes 35", "the same in less time"), ("rackside today --json", "the same for another program")],
        SummaryCommand => [Week, ("rackside summary --week 2026-W48", "an earlier week"), ("rackside summary --json", "the same for another program")],
        CalendarCommand => [Calendar, ("rackside calendar --ics training.ics --at 18:30 --remind 30", "a file for any calendar"), ("rackside calendar --json", "for another program")],
        AwayCommand => [Away, ("rackside away today --for illness", "until you say that you are back"), ("rackside away --back", "you are back"), ("rackside away --take-back 2026-12-20", "as if never told"), ("rackside away --json", "for another program")],
        HistoryCommand => [Squat, ("rackside history bench press", "by name"), ("rackside history core --json", "for another program")],
        ForecastCommand => [("rackside forecast", "where the main lifts may be in twelve weeks"), ("rackside forecast --json", "every week, for another program")],
        ReportCommand => [("rackside report --out week.html", "this week"), ("rackside report --month 2026-11 --out month.html", "the weeks of a month"), ("rackside report --paper --out sheet.html", "the next training day for pen and paper")],
        EnterCommand => [("rackside enter", "today's session from paper"), ("rackside enter yesterday", "yesterday's"), ("rackside enter 2026-11-25 --day strength-day", "a strength day, whatever was due")],
        RedateCommand => [("rackside redate", "the last sessions, with their numbers"), ("rackside redate 2026-11-09 2026-11-10", "the session of that day was a day later")],
        PlatesCommand => [Plates, ("rackside plates 62,5", "the same"), ("rackside plates 135lb", "in pounds, with the plates of this gym"), ("rackside plates 20 --for bb-curl", "on the bar kept for it")],
        KnownCommand => [("rackside known deadlift 60 8", "begin below 60 kg for 8"), ("rackside known front squat 95lb 5", "in pounds"), ("rackside known deadlift --take-back", "begin with the search after all")],
        SoreCommand => [("rackside sore squat", "squats are lighter next time"), ("rackside sore squat --take-back", "they were not sore after all")],
        WeighCommand => [("rackside weigh 72.4", "this morning's body weight"), ("rackside weigh 72,4 --slept 7:30 --food 2600", "with last night and yesterday's food"), ("rackside weigh 159.6lb --sure", "in pounds, and meant although far from the last"), ("rackside weigh --json", "for another program")],
        BodyCommand => [("rackside body", "trend, verdict, need, target"), ("rackside body --height 178 --age 41 --sex female", "what the formulas want"), ("rackside body --facts supplements", "a page of facts"), ("rackside body --hide", "show nothing of it"), ("rackside body --show", "show it again"), ("rackside body --json", "for another program")],
        BackupCommand => [Backup, ("rackside backup /media/stick", "the same on a USB stick")],
        RestoreCommand => [("rackside restore logbook-2026-11-25.db", "asks before it changes anything")],
        ExportCommand => [Export, ("rackside export --lifter Ottoline", "one lifter, to the screen or a pipe"), ("rackside export --csv tables", "tables for a spreadsheet")],
        ImportCommand => [("rackside import record.json", "asks before it changes anything"), ("rackside import record.json --dry-run", "only what it would add"), ("rackside import sets.csv --map my-map.yaml --dry-run", "a table, and what is wrong in it by line")],
        EraseCommand => [("rackside erase Ottoline", "asks first; cannot be taken back")],
        LiftersCommand => [("rackside lifters", "who trains here"), ("rackside lifters --json", "for another program")],
        GymJoinCommand => [("rackside gym join \"Host=gym;Database=gym;Username=rack\" --password-file pw", "with the racks' role")],
        GymPrepareCommand => [("rackside gym prepare \"Host=gym;Database=gym;Username=gym_owner\" --role rack", "once, as the owner")],
        GymStatusCommand or GymCommand => [("rackside gym status", "what waits to be sent"), ("rackside gym status --json", "for another program")],
        GymSyncCommand => [("rackside gym sync", "send and take, once")],
        GymLeaveCommand => [("rackside gym leave", "go on alone; nothing is lost")],
        CheckCommand => [Check, ("rackside check --data .", "the files in another folder"), ("rackside check --json", "for another program")],
        PlanCommand => [Plans, Use, Plan, Try],
        PlanListCommand => [Plans, ("rackside plan list --json", "for another program")],
        PlanUseCommand => [Use, ("rackside plan use my-plan.yaml", "a plan file of your own"), ("rackside plan use built-in", "the one that RackSide begins with")],
        PlanCheckCommand => [Plan],
        PlanTryCommand => [Try, ("rackside plan try my-plan.yaml --lifters 5 --kit gym.yaml --minutes 60", "with that kit, in an hour"), ("rackside plan try my-plan.yaml --lifters 5 --json", "every month, for another program")],
        _ => [("rackside", "the full screen beside the rack"), Today, Week, Calendar, Squat, Plates, Check],
    };
}
