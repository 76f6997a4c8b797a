// Package quotedcells takes the quotation marks off a table in which every cell stands between them, as a program prints it.
//
//	'P3 pin'    'CN1 pin'   'Name'          P3 pin    CN1 pin    Name
//	'21'        '1'         'Horn'     ->   21        1          Horn
//	'-'         '2'         'Spare'         -         2          Spare
//
// Cells with blanks between them come out in columns; those with a sign between them come out between the marks that such lists have.
// A line of which one cell has none stays as it is.
package quotedcells
