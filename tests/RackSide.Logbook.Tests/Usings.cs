global using CsCheck;
global using NodaTime;
global using RackSide.Logbook.Tests.Harness;
global using RackSide.Training.History;
global using RackSide.Training.Measures;
