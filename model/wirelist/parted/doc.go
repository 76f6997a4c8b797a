// Package parted gives cells to lines of text that stand below a line of headings, where one sign parts the words of both:
//
//	Pin - Colour - Function - Goes to
//	1 - red - ignition - main relay 87
//	2 - spare
package parted
