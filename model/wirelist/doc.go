// Package wirelist reads wire lists that other people made and turns them into a
// harness.
//
// Words. A table is one sheet of a workbook or the whole of a text file, its rows
// with the line each stands on. A block is one table of a sheet: its headings, where it
// has any, the title rows above, the data rows below. A reading says what a block is and
// what each of its columns means; only blocks of wires make wires. A pin table says what is in each
// cavity of one connector; a from-to list gives both ends of each wire. A field is
// what a column means. A recipe is what a person said a column means. A finding is
// one thing the report says about a place in a list.
//
// Two steps, both pure functions of what they are given: Read, of package table, makes
// tables of bytes, Import makes a harness and a report of tables. Neither opens a file.
//
// The way through Import, a package each: block finds the tables of a sheet, grid gives each cell of some a row, and twoside makes
// one table of both sides of a connector; settle says what its columns are, by the headings that shape knows and by their cells;
// reading tries every way to read it, and takes the way that explains most of what stands there; row reads one row, with value and
// name for its cells; draft is the harness as far as it is read; join makes of it what the rows of several tables say together, and
// holds the whole against itself; audit holds it against the lists, row by row, and knows no habit of any; report is what is said on
// the way. boxtitles finds the rows that name boxes among those of a table of cavities. words has the headings in many languages,
// huekey the keys that a list gives to its colours, sidehead those that stand in two rows, freeword the words for a free cavity,
// doingword those for what is done with a wire, column looks at cells. comment, prose, arrow, point, runline, alike and sentence read
// texts that are no table, pads what boards call their cavities, cable what is said of cables, endtext the ends that are no cavity,
// signoff the rows that are none of the list, tail the small tables below one, cablelines the lines of a cable above its cores,
// fuseways the fuses that wires start at, plugwires the wires that their colours tell apart; grouphead says what a heading says of
// all rows below it, cablecells what the cells of a row say of cables and of the wires that go
// with its own, runon puts rows together that go on in the next one, farside what the tables of two devices say of one wire,
// bothends the columns of both ends in a cell, thingpins those of a thing and its unit, farcolumn the columns of far
// ends by their sides and by all of their cells, together
// gives the columns of a plain table their meanings all at once, evenlines makes tables of lines that are all
// built alike, total holds the line that sums a list up;
// huecodes finds whose short forms the cells of a column of colours are, saidonce what a list says once of many wires; endpins parts
// the ends of whole columns; toldpairs finds the sentences that twist wires together, freesaid reads those that say which cavities are
// free; penned makes rows of lines that say in the words of a language where their wires go, stamped
// those of the lines of a log or a chat that tell a wire, pinlines of the lines of a pinout as they stand in the text,
// noted writes the lines of a fitter's notes
// as the others read them, strokes reads lines that join the pins of two parts by a drawn stroke, atplaces tables
// of two columns that are headed by the places of their ends, boardpads those of the pads of a board and of modules,
// connectto lines of pins below a sentence that says what a thing is wired to,
// gaprows those of two columns of a text, midarrow tables
// with a column of arrows between the two, parthead those whose columns are headed by the parts that the wires join, twoheads
// joins headings that stand in two rows, severalto columns that count the places where a wire goes, stripsides makes
// a wire for either side of a terminal whose sides differ, codedwires parts the letters
// of a colour from a size, plaintitle makes lines plain that name a connector, described
// parts the short names of nets from the texts about them, taghues finds the colours
// at the end of the numbers of wires, pinhues those beside cavities, rising tells numbers that rise by one, dotends finds tables
// with a connector, a dot and its pin in a cell; codepage finds the letters of texts that do not say in which code page they are;
// splicecells takes the
// splices in a column of their own for ends, outputs tells the numbers of outputs from cavities, thingheads calls the connectors of
// sections by their titles, titleplugs the plugs of one board whose pins several tables count; twoscripts parts what a text says once in
// each of two scripts; farheads makes tables of lines below the parts that their wires go to,
// huelines of the wires that a device and their colour name; pieces is asked last, about lines
// that no other package could read; toldcells tells what the cells of lines without headings are by all lines together, for partmark,
// which parts lines at any mark that parts them evenly, manywires, for lines that tell several wires each, spokenpins, for the pins that
// people tell each other in chats and answers, and wiresaid, for sentences that begin with the number of a wire; keyed reads lines of keys
// and values, and cards of several lines, leadvalues the colours and sizes that stand before ends; markup finds the tables
// of wikis, of pages and of other texts that are written to be shown; commas parts texts at their commas,
// endvalues the sizes of wires from ends that they stand behind, squaremm writes mm² where the sizes of a column are in mm;
// quotation parts a letter from those that it quotes, quotedcells takes
// the marks off tables in which each cell is quoted, inbars puts bars between the cells of small tables
// that stand in a text, manual finds the titles of sections that name a connector, goeson those that
// go on with a table of a page before, likeabove writes out what lines leave short as it is said in the line above or once of all,
// ownends rows without headings that count the cavities of one connector, toget lists of things
// to buy, plugindex the index of the connectors, worksteps the steps of work between the wires, endrows the wires with a row for each end,
// ratings the fuses of wires that another table has; countrow finds the row that counts the cells of
// its columns, iolist reads the inputs and outputs of cards, labelids takes labels for
// the numbers of wires, lineletters writes out the letters of colours that lines end in,
// titlepin makes headings plain that name the plug of their title, copies tells several things of one kind apart; madeover hands rows to
// those that write them anew.
//
// What is not understood is never guessed away. It stays as text in the note of its
// wire and as a finding with file, row and column. A connector, a far end, a length
// that the list does not give is left out and the report says so.
//
// What it does not do: it does not judge whether the harness can be built; that is
// the work of calc.
package wirelist
