#include "app/pages/prompts.h"

#include "app/widgets/question_cover.h"
#include "app/wording/prompt_words.h"

#include <QApplication>
#include <QDialog>
#include <QFileDialog>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QRegularExpression>
#include <QVBoxLayout>

#include <utility>

namespace rig {

namespace {

// Text above, a place for the answer, buttons below at the right.
struct PromptWindow
{
    PromptWindow(QWidget* parent, const QString& title, const QString& text)
        : dialog{parent}, column{new QVBoxLayout{&dialog}}, buttons{new QHBoxLayout}
    {
        dialog.setWindowTitle(title);
        auto* label = new QLabel{text};
        label->setObjectName("promptText");
        label->setTextFormat(Qt::PlainText); // names in it come from the user
        label->setWordWrap(true);
        label->setMinimumWidth(60 * label->fontMetrics().averageCharWidth());
        column->setContentsMargins(20, 18, 20, 18);
        column->setSpacing(14);
        column->addWidget(label, 1);
        column->addLayout(buttons);
        buttons->setSpacing(8);
        buttons->addStretch(1);
        dialog.setAccessibleDescription(text);
    }

    QPushButton* addButton(const QString& text, QDialog::DialogCode code)
    {
        auto* button = new QPushButton{text};
        button->setAutoDefault(false);
        QObject::connect(button, &QPushButton::clicked, &dialog, [this, code] { dialog.done(code); });
        buttons->addWidget(button);
        return button;
    }

    bool isAccepted() { return dialog.exec() == QDialog::Accepted; }

    QDialog dialog;
    QVBoxLayout* column;
    QHBoxLayout* buttons;
};

// "Rigband files (*.rigband)" -> "rigband"
QString suffixIn(const QString& filter)
{
    static const QRegularExpression first{QStringLiteral("\\*\\.([A-Za-z0-9]+)")};
    return first.match(filter).captured(1);
}

QString chosenFile(QFileDialog& dialog)
{
    if (dialog.exec() != QDialog::Accepted || dialog.selectedFiles().isEmpty())
        return {};
    return dialog.selectedFiles().constFirst();
}

} // namespace

Prompts::~Prompts() = default;

void WindowPrompts::tell(QWidget* parent, const QString& text)
{
    PromptWindow window{parent, PromptWords::noticeTitle(), text};
    QPushButton* understood = window.addButton(PromptWords::understood(), QDialog::Rejected);
    understood->setObjectName("promptClose");
    understood->setDefault(true);
    understood->setFocus();
    window.dialog.exec();
}

bool WindowPrompts::confirm(QWidget* parent, const QString& title, const QString& question,
                            const QString& yesText)
{
    PromptWindow window{parent, title, question};
    window.addButton(yesText, QDialog::Accepted)->setObjectName("promptYes");
    QPushButton* leave = window.addButton(PromptWords::leaveAsItIs(), QDialog::Rejected);
    leave->setObjectName("promptLeave");
    leave->setDefault(true);
    leave->setFocus();
    return window.isAccepted();
}

void WindowPrompts::askText(QWidget* parent, const QString& title, const QString& question,
                            const QStringList& offered, std::function<void(const QString&)> take)
{
    QWidget* asker = parent ? parent : QApplication::activeWindow();
    if (asker) // the window owns it
        new QuestionCover{*asker,
                          {title, question, PromptWords::takeText(), PromptWords::leaveAsItIs(), offered},
                          std::move(take)};
}

QString WindowPrompts::askNewFile(QWidget* parent, const QString& filter)
{
    QFileDialog dialog{parent, PromptWords::newFileTitle(), {}, filter};
    dialog.setAcceptMode(QFileDialog::AcceptSave);
    dialog.setDefaultSuffix(suffixIn(filter));
    return chosenFile(dialog);
}

QString WindowPrompts::askSaveFile(QWidget* parent, const QString& filter, const QString& suggestedName)
{
    QFileDialog dialog{parent, PromptWords::saveFileTitle(), {}, filter};
    dialog.setAcceptMode(QFileDialog::AcceptSave);
    dialog.setDefaultSuffix(suffixIn(filter));
    dialog.selectFile(suggestedName);
    return chosenFile(dialog);
}

QString WindowPrompts::askOpenFile(QWidget* parent, const QString& filter)
{
    QFileDialog dialog{parent, PromptWords::openFileTitle(), {}, filter};
    dialog.setFileMode(QFileDialog::ExistingFile);
    return chosenFile(dialog);
}

} // namespace rig
