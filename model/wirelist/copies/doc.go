// Package copies reads tables of several things of one kind, each wired as the others are: the table says once which cavity of such a
// thing a wire goes to, and which of the things it is in a column of its own.
//
// Words. A thing is what the heading of the far cavities names, "Injector" of "Injector pin"; its number is what tells it from the
// others, in a column headed as what is counted, "Cyl", "Motor".
//
// It makes columns for the far ends. A table whose far cavities are each named once stays as it is.
package copies
