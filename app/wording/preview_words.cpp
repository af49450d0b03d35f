#include "app/wording/preview_words.h"

namespace rig {

QString PreviewWords::keySave() { return tr("S", "key for save as PDF"); }
QString PreviewWords::keyPaper() { return tr("A", "key for the other paper"); }

QString PreviewWords::keyEnds() { return tr("E", "key for the ends of earlier prints"); }
QString PreviewWords::keyAppendix() { return tr("X", "key for the appendix"); }

QString PreviewWords::title() { return tr("The engineer’s report"); }
QString PreviewWords::layingOut() { return tr("Laying out the report …"); }
QString PreviewWords::page(int page, int count) { return tr("Page %1 of %2").arg(page).arg(count); }
QString PreviewWords::larger() { return tr("Larger  (+)"); }
QString PreviewWords::smaller() { return tr("Smaller  (−)"); }
QString PreviewWords::fit() { return tr("Fit the width  (0)"); }
QString PreviewWords::paper() { return tr("Paper (%1)").arg(keyPaper()); }
QString PreviewWords::appendix() { return tr("Appendix (%1)").arg(keyAppendix()); }

QString PreviewWords::ends() { return tr("Earlier ends (%1)").arg(keyEnds()); }

QString PreviewWords::appendixHint()
{
    return tr(
        "Readings listed one by one, looks, pulls and control checks. The tables beside the PDF hold them "
        "in any case.");
}

QString PreviewWords::save() { return tr("Save as PDF …  (%1)").arg(keySave()); }
QString PreviewWords::back() { return tr("Back  (Esc)"); }
QString PreviewWords::pdfFiles() { return tr("PDF files (*.pdf)"); }

QString PreviewWords::hint()
{
    return tr("Page Up and Page Down turn the pages. The tables of all readings and figures are saved "
              "beside the PDF.");
}

QString PreviewWords::saved(const QString& pdf, const QString& folder)
{
    return tr("Saved: %1. All readings and figures as tables: %2.").arg(pdf, folder);
}

QString PreviewWords::replaceTitle() { return tr("Tables are there already"); }

QString PreviewWords::replace(const QString& folder)
{
    return tr("%1 is there already. Replace the tables in it by those of this report?").arg(folder);
}

QString PreviewWords::replaceYes() { return tr("Replace them"); }

} // namespace rig
