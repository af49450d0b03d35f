#pragma once

#include "core/rigging/rigging_record.h"

#include <QFrame>

#include <array>
#include <optional>

class QLabel;
class QPushButton;

namespace rig {

// One question with three answers: yes, no, cannot see. Whoever answers says so; the tile only shows it.
class QuestionTile : public QFrame
{
    Q_OBJECT

public:
    // Three answers for a look; a pull can be done or not, so `withCannotSee` false leaves the third out.
    QuestionTile(const QString& title, const QString& hint, bool withCannotSee, QWidget* parent = nullptr);

    void setHint(const QString& hint);
    void setAnswer(std::optional<Answer> answer);
    // `asked`: this is the question open now. `open`: it may be answered at all.
    void setState(bool asked, bool open);
    void focusFirst();

signals:
    void answered(rig::Answer answer);

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    QPushButton* addButton(Answer answer);

    bool m_isAsked = false;
    QString m_title;
    QLabel* m_hint = nullptr;
    std::array<QPushButton*, 3> m_buttons{};
};

} // namespace rig
