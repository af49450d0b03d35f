#pragma once

#include <QLocale>
#include <QString>
#include <QTranslator>

#include <memory>
#include <vector>

class QCoreApplication;

namespace rig {

// One that the program speaks. `name` is in that language itself, for whoever looks for it.
struct Language
{
    QString code; // of ISO 639: "de"
    QString name; // "Deutsch"
};

// English, in which the sentences are written, stands first.
const std::vector<Language>& languages();

// `wanted` where the program speaks it; otherwise the first of the system's that it speaks, or English.
QString languageOf(const QString& wanted, const QLocale& system);

// The code of the one that is spoken now.
QString spokenLanguage();

// How figures and days are written beside words of `code`: as the system does where that is its language too.
QLocale figuresOf(const QString& code, const QLocale& system);

// The words and the figures of one language, for all that the application says while this lives; then they
// are again what they were before. Lives no longer than the application.
class Speech
{
public:
    // Says nothing where the translation of `code` is not there or damaged: then the words stay English.
    explicit Speech(const QString& code, const QLocale& system = QLocale::system());
    ~Speech();

    Speech(const Speech&) = delete;
    Speech& operator=(const Speech&) = delete;

private:
    QLocale m_before;
    std::vector<std::unique_ptr<QTranslator>> m_installed;
};

} // namespace rig
