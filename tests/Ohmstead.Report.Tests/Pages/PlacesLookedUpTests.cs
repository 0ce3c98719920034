using System.Collections;
using System.Collections.Immutable;
using System.Globalization;
using System.Reflection;
using Ohmstead.Report.Frame;
using Ohmstead.Report.Pages;

namespace Ohmstead.Report.Tests.Pages;

/// <summary>What each row of a page asks for is not looked for in all rows.</summary>
public sealed class PlacesLookedUpTests
{
    [Fact]
    public void Each_place_of_a_unit_is_found_without_going_through_all()
    {
        var places = new CountedList<UnitPlace>([
            .. Enumerable.Range(0, 1000).Select(i => new UnitPlace("R" + i.ToString(CultureInfo.InvariantCulture), false, false, null, [])),
        ]);
        var unit = new UnitPlaces("SP-0001", places);
        foreach (var place in places.Items)
        {
            Assert.Same(place, unit.Place(place.Reference));
        }

        Assert.Null(unit.Place("r1"));
        Assert.InRange(places.Looks, 1, 3000);
    }

    [Fact]
    public void How_a_visit_was_taken_keeps_no_list_that_a_row_could_go_through()
    {
        var how = typeof(BoardPage).Assembly.GetType("Ohmstead.Report.Tables.HowTaken", throwOnError: true)!;
        var fields = how.GetFields(BindingFlags.Instance | BindingFlags.NonPublic | BindingFlags.Public);

        Assert.NotEmpty(fields);
        Assert.DoesNotContain(fields, field => field.FieldType.IsAssignableTo(typeof(IEnumerable)) && field.FieldType != typeof(string));
    }

    private sealed class CountedList<T>(ImmutableArray<T> items) : IReadOnlyList<T>
    {
        public ImmutableArray<T> Items => items;

        public int Looks { get; private set; }

        public int Count => items.Length;

        public T this[int index]
        {
            get
            {
                Looks++;
                return items[index];
            }
        }

        public IEnumerator<T> GetEnumerator()
        {
            foreach (var item in items)
            {
                Looks++;
                yield return item;
            }
        }

        IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();
    }
}
