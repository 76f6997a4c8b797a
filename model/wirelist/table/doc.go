// Package table makes tables of lists that other people made: separated values,
// Markdown and other texts that are shown, .xlsx and .ods.
//
// A table is one sheet of a workbook or the whole of a text file, its rows with the
// line each stands on. Cells are text, one line each, as a person sees them. Files are
// untrusted: everything read is within limits that are given, a workbook is unpacked in
// memory and only the parts that hold cells, a formula gives the value stored with it,
// macros and links are not opened, no name in a file is a path of the machine.
//
// What it does not do: it does not know what a cell means; that is the work of
// model/wirelist.
package table
