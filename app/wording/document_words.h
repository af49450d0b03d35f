#pragma once

#include "core/exchange/document_fault.h"

#include <QCoreApplication>
#include <QString>

#include <cstdint>

namespace rig {

// What rigband-file says of a whole file as one document.
class DocumentWords
{
    Q_DECLARE_TR_FUNCTIONS(DocumentWords)

public:
    static QString written(const QString& document, const QString& file, std::int64_t facts);
    static QString made(const QString& file, std::int64_t facts);
    static QString tooLarge(const QString& document);

    // What is wrong, and where: the line, the kind of fact and its id.
    static QString sentence(const QString& document, const DocumentFault& fault);
    static QString asFoundInstead(); // what to do where the facts themselves can be read
    static QString nothingMade();
};

} // namespace rig
