Console.WriteLine("rackside");
