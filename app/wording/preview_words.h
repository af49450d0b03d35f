#pragma once

#include <QCoreApplication>
#include <QString>

namespace rig {

// Sentences around the pages of a report before they are written.
class PreviewWords
{
    Q_DECLARE_TR_FUNCTIONS(PreviewWords)

public:
    static QString keySave();
    static QString keyPaper();
    static QString keyAppendix();
    static QString keyEnds();

    static QString title();
    static QString layingOut();
    static QString page(int page, int count);
    static QString larger();
    static QString smaller();
    static QString fit();
    static QString paper();
    static QString appendix();
    static QString appendixHint();
    static QString ends();
    static QString save();
    static QString back();
    static QString pdfFiles();
    static QString hint();
    static QString saved(const QString& pdf, const QString& folder);
    static QString replaceTitle();
    static QString replace(const QString& folder);
    static QString replaceYes();
};

} // namespace rig
