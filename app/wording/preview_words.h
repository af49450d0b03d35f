#pragma once

#include <QCoreApplication>
#include <QString>

namespace rig {

// Sentences around the pages of a report before they are written.
class PreviewWords
{
    Q_DECLARE_TR_FUNCTIONS(PreviewWords)

public:
    static QString keySave() { return tr("S", "key for save as PDF"); }
    static QString keyPaper() { return tr("A", "key for the other paper"); }

    static QString title() { return tr("The engineer’s report"); }
    static QString page(int page, int count) { return tr("Page %1 of %2").arg(page).arg(count); }
    static QString larger() { return tr("Larger  (+)"); }
    static QString smaller() { return tr("Smaller  (−)"); }
    static QString fit() { return tr("Fit the width  (0)"); }
    static QString paper() { return tr("Paper (%1)").arg(keyPaper()); }
    static QString a4() { return tr("A4"); }
    static QString letter() { return tr("Letter"); }
    static QString save() { return tr("Save as PDF …  (%1)").arg(keySave()); }
    static QString back() { return tr("Back  (Esc)"); }
    static QString pdfFiles() { return tr("PDF files (*.pdf)"); }
    static QString hint()
    {
        return tr("Page Up and Page Down turn the pages. The tables of all readings and figures are saved "
                  "beside the PDF.");
    }
    static QString saved(const QString& pdf, const QString& folder)
    {
        return tr("Saved: %1. All readings and figures as tables: %2.").arg(pdf, folder);
    }
    static QString replaceTitle() { return tr("Tables are there already"); }
    static QString replace(const QString& folder)
    {
        return tr("%1 is there already. Replace the tables in it by those of this report?").arg(folder);
    }
    static QString replaceYes() { return tr("Replace them"); }
};

} // namespace rig
