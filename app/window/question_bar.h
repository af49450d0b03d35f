#pragma once

#include "app/pages/questions/questions_view.h"
#include "app/theme/theme.h"

#include <QFrame>
#include <QStringList>

class QLabel;
class QPushButton;

namespace rig {

class MarkWidget;

// The line below the top bar: shown on every page for as long as the airframe in view has open questions. It
// says as many of them as fit.
class QuestionBar : public QFrame
{
    Q_OBJECT

public:
    explicit QuestionBar(QWidget* parent = nullptr);

    // `blind`: a second person works without seeing the first result, so only the number is said.
    void display(const QString& registration, const std::vector<OpenQuestion>& open, bool blind);
    void setLook(const Look& look);
    // On the questions page itself the button leads back.
    void setOnPage(bool onPage);

signals:
    void showAsked();
    void leaveAsked();

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    void fit();

    QStringList m_sentences; // the longest first
    bool m_onPage = false;
    MarkWidget* m_mark = nullptr;
    QLabel* m_text = nullptr;
    QPushButton* m_show = nullptr;
};

} // namespace rig
