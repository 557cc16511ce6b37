namespace RigLang.Analysis.Solving;

/// <summary>The order in which things can be done of which some need others.</summary>
internal static class Order
{
    /// <summary>Groups of indices: each comes after those that it needs; those that need each other are one group.</summary>
    /// <param name="needs">Whether the first needs the second.</param>
    public static List<List<int>> Of(bool[][] needs)
    {
        var count = needs.Length;
        var reach = needs.Select(row => row.ToArray()).ToArray();
        for (var middle = 0; middle < count; middle++)
        {
            for (var from = 0; from < count; from++)
            {
                for (var to = 0; reach[from][middle] && to < count; to++)
                {
                    reach[from][to] |= reach[middle][to];
                }
            }
        }

        var groups = Enumerable.Range(0, count).GroupBy(index => Enumerable.Range(0, count).First(other => other == index || (reach[index][other] && reach[other][index])))
            .Select(group => group.ToList()).ToList();
        var done = new HashSet<int>();
        var order = new List<List<int>>();
        while (groups.Count > 0)
        {
            var next = groups.First(group => group.TrueForAll(index => Enumerable.Range(0, count).All(other => !reach[index][other] || done.Contains(other) || group.Contains(other))));
            groups.Remove(next);
            order.Add(next);
            done.UnionWith(next);
        }

        return order;
    }
}
