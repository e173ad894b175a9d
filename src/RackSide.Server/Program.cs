using RackSide.Server;

// Started by rackside on a rack that has joined a gym, and by nobody else; it ends when its input does.
using var dialogue = new Dialogue(TimeProvider.System);
dialogue.Run(Console.In, Console.Out);
